import { solutionOf, type Solution } from '../../compute/nutrients/solution.ts';
import { conductivityTable, rangeInWords } from '../../compute/solution/conductivity-table.ts';
import { contentTables } from '../../compute/solution/content-tables.ts';
import { litresInBoth, mixingTables } from '../../compute/solution/mixing-tables.ts';
import { ratiosTable } from '../../compute/solution/ratios-table.ts';
import type { PageTable } from '../../compute/tables/page-table.ts';
import { formatNumber } from '../../compute/format/format-number.ts';
import { tell } from '../../compute/words/tell.ts';
import { say, sayCount } from '../../model/say.ts';
import { escapeHtml, type FirstUnits, tableHtml, wordsHtml } from '../html.ts';
import { writeAnalysis } from './read-analysis.ts';
import type { Inputs } from './read-inputs.ts';

/** What the calculator shows for what was asked, and says of it in one line. */
export interface Answers {
  /** The mixing card: what to weigh and what a meter should show. */
  card: string;
  /** What the solution holds. */
  contents: string;
  /** For those who hear the page: the main nutrients, the conductivity, how much there is to look out for. */
  told: string;
}

/** The answers to what the fields ask for. All that was typed is escaped. */
export function answersHtml(inputs: Inputs, title: string, first: FirstUnits): Answers {
  const { recipe, litres, stockLitres, measuredEc } = inputs;
  const solution = solutionOf(recipe, measuredEc === null ? {} : { measuredEc });
  const warnings = solution.warnings.map(({ text }) => text);
  const measured =
    measuredEc === null ? [] : [{ heading: say('Measured'), lowest: measuredEc, highest: measuredEc }];
  const mixing = mixingTables(solution, { litres, ratio: recipe.stock_ratio, stockLitres });
  const contents = [...contentTables(solution), ratiosTable(solution), conductivityTable(solution, measured)];
  const card = [
    `<h2 id="card">${escapeHtml(title === '' ? say('Mixing card') : say('Mixing card: {title}', { title }))}</h2>`,
    `<p>${asked(inputs, first)}</p>`,
    listHtml(say('Look out'), warnings),
    ...mixing.slice(0, 1).map((table) => tableHtml(table, first)),
    besideHtml(mixing.slice(1), first),
    `<p>${conductivityInWords(solution, measuredEc)}</p>`,
    `<p class="signed">${escapeHtml(say('Mixed by {line} on {line}', { line: '____________________' }))}</p>`,
  ];
  const held = [
    `<h2 id="held">${escapeHtml(say('What the solution holds'))}</h2>`,
    besideHtml(contents, first),
    solution.reason === '' ? '' : `<p class="note">${escapeHtml(solution.reason)}</p>`,
  ];
  return { card: card.join(''), contents: held.join(''), told: toldOf(solution, warnings.length) };
}

function asked({ recipe, litres }: Inputs, first: FirstUnits): string {
  const water = writeAnalysis(recipe.water ?? {});
  const ratio = recipe.stock_ratio;
  const volume = wordsHtml(tell('For {volume} of solution', { volume: litresInBoth(litres) }), first);
  const rest = [
    water === ''
      ? say('in water that is taken to hold nothing')
      : say('in water that holds {water} mg/L already', { water }),
    ...(ratio === undefined ? [] : [say('from stocks of 1 part in {ratio}', { ratio })]),
  ];
  return `${[volume, ...rest.map(escapeHtml)].join(', ')}.`;
}

/** Tables side by side where there is room. */
function besideHtml(tables: readonly PageTable[], first: FirstUnits): string {
  const boxes = tables.map((table) => `<div>${tableHtml(table, first)}</div>`);
  return `<div class="beside">${boxes.join('')}</div>`;
}

function listHtml(heading: string, sentences: readonly string[]): string {
  if (sentences.length === 0) return '';
  const items = sentences.map((sentence) => `<li>${escapeHtml(sentence)}</li>`).join('');
  return `<div class="look-out"><h3>${escapeHtml(heading)}</h3><ul>${items}</ul></div>`;
}

function conductivityInWords({ ec }: Solution, measured: number | null): string {
  const range = rangeInWords(ec);
  const expected =
    range === null
      ? say('The conductivity to expect cannot be reckoned from what is given.')
      : say('A meter should show {range} mS/cm at 25 °C.', { range });
  if (measured === null) return escapeHtml(expected);
  return escapeHtml(`${expected} ${say('Measured: {value} mS/cm.', { value: formatNumber(measured, 2) })}`);
}

function toldOf({ amounts, ec }: Solution, warnings: number): string {
  const main = (['N', 'P', 'K', 'Ca', 'Mg', 'S'] as const).map((nutrient) => {
    const { value } = amounts.total[nutrient];
    return `${nutrient} ${value === null ? say('unknown') : formatNumber(value, 0)}`;
  });
  const range = rangeInWords(ec);
  const parts = [
    `${main.join(', ')} mg/L`,
    range === null ? say('EC unknown') : say('EC {range} mS/cm', { range }),
    warnings === 0
      ? say('nothing to look out for')
      : sayCount(warnings, '{count} thing to look out for', '{count} things to look out for'),
  ];
  return `${parts.join('; ')}.`;
}
