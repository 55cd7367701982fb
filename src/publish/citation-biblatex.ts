import type { CreditedPerson } from './credited-people.ts';
import type { Dataset } from './dataset.ts';
import { oneLine } from './one-line.ts';
import { sortedName } from './person-name.ts';

const escapes: Record<string, string> = {
  '\\': '\\textbackslash{}',
  '{': '\\{',
  '}': '\\}',
  '~': '\\textasciitilde{}',
  '^': '\\textasciicircum{}',
};

/** Text as TeX takes it, so that no character of it is a command. */
const tex = (text: string): string =>
  oneLine(text).replace(/[\\{}~^%&#$_]/g, (character) => escapes[character] ?? `\\${character}`);

/** A name in braces is not split: one that holds `and` or a comma of its own would be. */
function author({ name }: CreditedPerson): string {
  const parts = [name.family, name.given ?? ''].join(' ');
  return /\band\b|,/i.test(parts) ? `{${tex(name.full)}}` : tex(sortedName(name));
}

/** citation.bib: a BibLaTeX entry of type dataset. `doi` and `url` are verbatim there. */
export function citationBiblatex(set: Dataset): string {
  const fields: [string, string | null][] = [
    ['author', set.creators.map(author).join(' and ')],
    ['title', `{${tex(set.title)}}`],
    ['version', tex(set.version)],
    ['date', set.released],
    ['publisher', `{${tex(set.publisher)}}`],
    ['doi', set.doi],
    ['url', set.dataPage],
    ['note', tex(`Licence ${set.licence.id}`)],
    ['abstract', tex(set.description)],
    ['keywords', tex(set.keywords.map((word) => word.replaceAll(',', ' ')).join(', '))],
  ];
  const lines = fields.flatMap(([name, value]) => (value === null ? [] : [`  ${name} = {${value}},`]));
  return `@dataset{${set.id},\n${lines.join('\n')}\n}\n`;
}
