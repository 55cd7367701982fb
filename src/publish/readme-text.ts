import type { Query } from '../model/trial.ts';
import { citationOf } from './citation-sentence.ts';
import type { Dataset } from './dataset.ts';
import { placeInWords } from './described-in-words.ts';
import { oneLine } from './one-line.ts';
import { readingExamples } from './reading-examples.ts';

const width = 88;

/** The text in lines of at most `width` characters where its words allow, each after the indent. */
function wrapped(text: string, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of oneLine(text).split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > width) {
      lines.push(indent + line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, indent + line].join('\n');
}

const section = (heading: string, body: string): string =>
  `${heading}\n${'-'.repeat(heading.length)}\n${body}\n`;

const reading = `weights.csv is the file to work with: one row a plant and cut (or a pot, where pots were
weighed whole; its cell under plant is then empty), UTF-8, a comma between cells, a point in
decimals. Weights are in g. An empty cell means that there is no value; the status says why:

  weighed       the weight stands in the row
  not weighed   the plant was there, its weight is unknown: its pot's total is unknown too,
                never 0, unless pot_total gives it
  dead          counts as 0 per pot and per plant set, left out per plant harvested
  no regrowth   alive but gave nothing at this cut; counts as dead does
  culled        taken out on purpose; left out of every mean
  not planted   left out of every mean

Text that a spreadsheet would run as a formula has an apostrophe put before it in weights.csv
and summary.csv. To get the text as it was given, take one apostrophe off wherever it stands
at the start of a cell, or after a semicolon, tab or line break inside it, and before = + - @
(or a tab or line break). harvest.csv is as the grower wrote it, byte for byte: open a copy
with care in a spreadsheet.`;

/** What the check found and the grower let stand. */
function openQueries(queries: readonly Query[]): string[] {
  const lines = queries.map(({ problem, reason }) => {
    const where = problem.where === null ? '' : `${problem.where}: `;
    return wrapped(`${where}${problem.message}${reason === null ? '' : ` The grower says: ${reason}`}`, '  ');
  });
  return lines.length === 0 ? [] : [section('Open queries', lines.join('\n'))];
}

/** README.txt: what a person reads first. Lines end with LF. */
export function readmeText(
  set: Dataset,
  queries: readonly Query[],
  files: readonly { name: string; description: string }[],
): string {
  const days = set.days === null ? '' : `, ${set.days.first} to ${set.days.last}`;
  const [primary] = set.variables;
  const variables = set.variables.map(
    (variable) =>
      `  ${variable.id}: ${variable.name}, ${variable.unit === null ? 'a plain number' : `in ${variable.unit.ucum}`}. ${oneLine(variable.method)}`,
  );
  const allows = set.licence.allows === null ? '' : `${set.licence.allows}\n`;
  const changes = set.releases.map((release) =>
    wrapped(`${release.version} (${release.date}): ${release.note ?? 'no note.'}`, '  '),
  );
  const title = oneLine(set.title);
  return [
    `${title}\n${'='.repeat(Math.min(title.length, width))}\nVersion ${set.version}, ${set.released}\n`,
    `${wrapped(set.description)}\n`,
    `${wrapped(`${set.crop.name} at ${placeInWords(set.site)} (${set.site.setting})${days}.`)}\n`,
    section('How to cite', wrapped(citationOf(set))),
    section('Licence', `${allows}${set.licence.name} (${set.licence.id})\n${set.licence.address}`),
    section(
      'The files',
      files.map((file) => `  ${file.name}\n${wrapped(file.description, '      ')}`).join('\n'),
    ),
    section('What was measured', variables.map((line) => wrapped(line, '  ')).join('\n')),
    section('How to read the weights', reading),
    ...readingExamples('weights.csv', primary?.id ?? 'fresh_weight')
      .filter((example) => example.language !== 'JavaScript')
      .map((example) => section(`In ${example.language}`, example.code)),
    ...openQueries(queries),
    section('Is it whole?', 'sha256sum --check SHA256SUMS'),
    section('What changed', changes.join('\n')),
    section('Where it is kept', `${set.dataPage}\n${set.page}`),
  ].join('\n');
}
