import { statuses } from '../check/statuses.ts';
import { say } from '../model/say.ts';
import type { Sheet } from '../model/workbook.ts';
import { useOfWords } from './column-words.ts';
import { usesAt } from './find-headings.ts';
import { gridOf, type Grid } from './grid.ts';
import type { KnownTrial } from './known.ts';
import { keys, otherUses, type ColumnUse, type Key, type Mapping } from './mapping.ts';
import { fillIn } from './propose-mapping.ts';
import { lineOf, rangeOf } from './source-entry.ts';

/** What a grower says a table is read as, in words; everything is optional. */
export interface Corrections {
  turned?: boolean | undefined;
  headings?: string | undefined;
  rows?: string | undefined;
  leaveOut?: readonly string[] | undefined;
  /** `D=fresh_weight in oz`. */
  columns?: readonly string[] | undefined;
  /** `container=T1`. */
  always?: readonly string[] | undefined;
  /** `x=dead`. */
  words?: readonly string[] | undefined;
  decimal?: string | undefined;
  dates?: string | undefined;
}

type Draft = Mapping & {
  lines: Mapping['lines'];
  uses: Map<number, ColumnUse>;
  leftOut: number[];
  always: Partial<Record<Key, string>>;
  words: Record<string, string>;
};

/** A mapping with corrections applied; or what in them cannot be understood. */
export function corrected(
  sheet: Sheet,
  proposed: Mapping | null,
  given: Corrections,
  known: KnownTrial,
): Mapping | { fault: string } {
  const start = startOf(sheet, proposed, given, known);
  if ('fault' in start) return start;
  const draft: Draft = {
    ...start,
    uses: new Map(start.uses),
    leftOut: [...start.leftOut],
    always: { ...start.always },
    words: { ...start.words },
  };
  for (const step of [setRows, setColumns, setAlways, setWords, setForms]) {
    const fault = step(draft, given, known);
    if (fault !== null) return { fault };
  }
  return draft;
}

/** The proposal, or another where the headings are said to be elsewhere or the table to be turned. */
function startOf(
  sheet: Sheet,
  proposed: Mapping | null,
  given: Corrections,
  known: KnownTrial,
): Mapping | { fault: string } {
  // Lines of a turned table are lettered, so that the headings named say which is meant.
  const isTurned =
    given.turned ??
    (given.headings === undefined ? (proposed?.isTurned ?? false) : /^[A-Z]/i.test(given.headings));
  const range = given.headings === undefined ? null : rangeOf(given.headings, isTurned);
  if (given.headings !== undefined && range === null)
    return {
      fault: say('--headings is a row, such as 3, or rows, such as 3-4; found "{found}"', {
        found: given.headings,
      }),
    };
  if (proposed !== null && range === null && isTurned === proposed.isTurned) return proposed;
  const [first, last] = range ?? [0, 0];
  const grid = gridOf(sheet, isTurned);
  const uses = usesAt(grid, first, last, known);
  // Columns that the grower names decide which rows have values.
  for (const text of given.columns ?? []) {
    const [name = '', words = ''] = halves(text);
    const [field, use] = [lineOf(name.toUpperCase(), !isTurned), useOfWords(words)];
    if (field !== null && use !== null) uses.set(field, use);
  }
  const made = fillIn(sheet, grid, { first, last, uses, score: 0 }, known);
  return made?.mapping ?? bare(sheet.name, grid, [first, last], uses);
}

/** All below the headings, where no column of values is known yet. */
function bare(
  sheet: string,
  grid: Grid,
  headings: readonly [number, number],
  uses: ReadonlyMap<number, ColumnUse>,
): Mapping {
  const first = headings[1] + 1;
  const lines = [first, Math.max(first, grid.lines.length - 1)] as const;
  const rest = { leftOut: [], always: {}, hasTitles: false, words: {}, decimal: '.', dates: null } as const;
  return { sheet, isTurned: grid.isTurned, headings, lines, uses, ...rest };
}

function setRows(draft: Draft, { rows, leaveOut = [] }: Corrections): string | null {
  if (rows !== undefined) {
    const range = rangeOf(rows, draft.isTurned);
    if (range === null)
      return say('--rows is the first and last row of data, such as 4-51; found "{found}"', { found: rows });
    draft.lines = range;
  }
  for (const text of leaveOut.flatMap((list) => list.split(','))) {
    const range = rangeOf(text.trim(), draft.isTurned);
    if (range === null)
      return say('--leave-out is a row, such as 12, or rows, such as 12-14; found "{found}"', {
        found: text,
      });
    for (let line = range[0]; line <= range[1]; line += 1) draft.leftOut.push(line);
  }
  return null;
}

function setColumns(draft: Draft, { columns = [] }: Corrections, known: KnownTrial): string | null {
  for (const text of columns) {
    const [name = '', words = ''] = halves(text);
    const field = lineOf(name.toUpperCase(), !draft.isTurned);
    const use = useOfWords(words);
    if (field === null || use === null)
      return say(
        '--column is a column and what it is, such as D="fresh_weight in oz, plant 2"; found "{found}"',
        { found: text },
      );
    const names = usesOf(known);
    if (!names.includes(use.is))
      return say('"{found}" is nothing that a column can be; it can be {names}', {
        found: use.is,
        names: names.join(', '),
      });
    if (use.is === 'nothing') draft.uses.delete(field);
    else draft.uses.set(field, withUnit(use, known));
  }
  return null;
}

/** Everything that a column of the trial's table can be, by name. */
export const usesOf = ({ variables, factors }: KnownTrial): string[] => [
  ...keys,
  ...otherUses,
  ...variables.map(({ id }) => id),
  ...factors.map(({ id }) => id),
];

/** Without a unit of its own a column is in that of the trial. */
function withUnit(use: ColumnUse, { variables }: KnownTrial): ColumnUse {
  const unit = use.unit ?? variables.find(({ id }) => id === use.is)?.unit ?? '';
  return unit === '' ? use : { ...use, unit };
}

function setAlways(draft: Draft, { always = [] }: Corrections): string | null {
  for (const text of always) {
    const [name = '', value = ''] = halves(text);
    const key = keys.find((one) => one === name);
    if (key === undefined || value === '')
      return say('--always is one of {keys} and its value, such as container=T1; found "{found}"', {
        keys: keys.join(', '),
        found: text,
      });
    draft.always[key] = value;
  }
  return null;
}

function setWords(draft: Draft, { words = [] }: Corrections): string | null {
  for (const text of words) {
    const [word = '', meant = ''] = halves(text);
    const isKnown =
      meant === 'blank' || /^-?\d+(?:\.\d+)?$/.test(meant) || statuses.some((one) => one === meant);
    if (word === '' || !isKnown)
      return say(
        '--word is a word and what it means, such as x=dead: {statuses}, blank, or a number; found "{found}"',
        { statuses: statuses.join(', '), found: text },
      );
    draft.words[word] = meant;
  }
  return null;
}

function setForms(draft: Draft, { decimal, dates }: Corrections): string | null {
  if (decimal !== undefined) {
    if (decimal !== '.' && decimal !== ',')
      return say('--decimal is . or ,; found "{found}"', { found: decimal });
    draft.decimal = decimal;
  }
  if (dates !== undefined) {
    if (dates !== 'day first' && dates !== 'month first')
      return say('--dates is "day first" or "month first"; found "{found}"', { found: dates });
    draft.dates = dates;
  }
  return null;
}

/** What stands before and after the last `=`, since a word may hold one. */
function halves(text: string): [string, string] | [] {
  const at = text.lastIndexOf('=');
  return at < 1 ? [] : [text.slice(0, at).trim(), text.slice(at + 1).trim()];
}
