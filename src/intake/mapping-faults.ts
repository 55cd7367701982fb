/** What is wrong with how a whole table is read, before or after its rows are. */
import { say } from '../model/say.ts';
import { wordsOfUse } from './column-words.ts';
import type { Grid, GridCell } from './grid.ts';
import type { KnownTrial } from './known.ts';
import { keys, type Key, type Mapping } from './mapping.ts';
import type { TableReading } from './table-reading.ts';
import type { TakenRow } from './take-rows.ts';

/** What a mapping does not say where it stands, in a sentence; null where every row can have a place. */
export function whatIsLacking({ uses, always, hasTitles }: Mapping, known: KnownTrial): string | null {
  const all = [...uses.values()];
  const values = all.filter(({ is }) => known.variables.some(({ id }) => id === is));
  if (values.length === 0)
    return say('No column is taken for a weight, or for another variable of the trial.');
  const place = all.find(({ is }) => is === 'place');
  if (place !== undefined && place.as === undefined)
    return say('It is not clear how places are written: as 2-3 for row 2 column 3, or otherwise.');
  const isSaid = (key: Key): boolean =>
    always[key] !== undefined ||
    all.some(({ is }) => is === key) ||
    values.every(({ at }) => at?.[key] !== undefined) ||
    (key === 'container' ? hasTitles || place?.as === 'container-row-column' : place !== undefined);
  const lacking = (['container', 'row', 'column'] as const).filter((key) => !isSaid(key));
  if (lacking.length === 0) return null;
  return say('Nothing says the {keys} of each plant; without its place a weight cannot be brought in.', {
    keys: lacking.map((key) => say(key)).join(', '),
  });
}

/** Columns that are taken for what another is taken for already: of two tables side by side, or of two cuts. */
export function saidTwice(grid: Grid, { uses }: Mapping): [number, string][] {
  const seen = new Map<string, number>();
  return [...uses].flatMap(([field, use]): [number, string][] => {
    if (use.is === 'remark' || use.is === 'nothing') return [];
    const name = [use.is, ...keys.map((key) => use.at?.[key] ?? '')].join('|');
    const before = seen.get(name);
    if (before === undefined) {
      seen.set(name, field);
      return [];
    }
    const message = say(
      '{first} and {second} are both taken for {use}; say which is of what plant, cut or container, or take one for nothing.',
      { first: grid.fieldName(before), second: grid.fieldName(field), use: wordsOfUse(use) },
    );
    return [[field, message]];
  });
}

/** The first cells of rows above the headings that have a place and a weight under the same columns. */
export function dataAbove({ grid, mapping, known }: TableReading): GridCell[] {
  const fields = (names: readonly string[]): number[] =>
    [...mapping.uses].filter(([, { is }]) => names.includes(is)).map(([field]) => field);
  const [places, values] = [fields(['row', 'column', 'place']), fields(known.variables.map(({ id }) => id))];
  if (places.length === 0) return [];
  return grid.lines.slice(0, mapping.headings[0]).flatMap((line) => {
    const isPlaced = places.every((field) => /\d|^\p{L}$/u.test(line[field]?.text ?? ''));
    const hasValue = values.some((field) => /^\d/.test(line[field]?.text ?? ''));
    return isPlaced && hasValue ? (line.find((cell) => cell !== null) ?? []) : [];
  });
}

/** Numbers that go on from one container to the next are no places within it, though some would be. */
export function isNumberedOn({ uses }: Mapping, rows: readonly TakenRow[]): boolean {
  if (![...uses.values()].some(({ as }) => as?.startsWith('numbered') === true)) return false;
  const byContainer = Map.groupBy(rows, ({ keys: { container } }) => container);
  const places = [...byContainer.values()].map(
    (some) => new Set(some.map(({ keys: { row, column } }) => `${row} ${column}`)),
  );
  const isFirst = places.map((some) => some.has('1 1'));
  const isApart =
    new Set(places.flatMap((some) => [...some])).size === places.reduce((sum, { size }) => sum + size, 0);
  return places.length > 1 && isFirst.includes(false) && isApart;
}
