import type { Dataset } from './dataset.ts';
import { oneLine } from './one-line.ts';
import { sortedName } from './person-name.ts';

/** citation.ris: one reference of type DATA. Tags and lines are as the format has them: CR LF at each end. */
export function citationRis(set: Dataset): string {
  const tags: [string, string | null][] = [
    ['TY', 'DATA'],
    ...set.creators.map((person): [string, string] => ['AU', sortedName(person.name)]),
    ['TI', set.title],
    ['PY', set.released.slice(0, 4)],
    ['DA', set.released.replaceAll('-', '/')],
    ['ET', set.version],
    ['PB', set.publisher],
    ['DO', set.doi],
    ['UR', set.dataPage],
    ['AB', set.description],
    ...set.keywords.map((word): [string, string] => ['KW', word]),
    ['LA', set.language],
    ['N1', `Licence ${set.licence.id}`],
    ['ER', ''],
  ];
  return tags.flatMap(([tag, value]) => (value === null ? [] : [`${tag}  - ${oneLine(value)}\r\n`])).join('');
}
