import type { Grid, GridCell } from './grid.ts';
import { saysPlant, useOfHeading } from './heading-use.ts';
import type { KnownTrial } from './known.ts';
import type { ColumnUse, Key } from './mapping.ts';

/** Lines of headings, and what each field under them is. */
export interface Headings {
  first: number;
  last: number;
  uses: Map<number, ColumnUse>;
  /** How many different things they name; more is surer. */
  score: number;
}

const linesLooked = 60;
const mostLines = 3;

/**
 * The lines that are headings: those that name the most of what a harvest says, and among equals the fewest and
 * first. Null where no line names both values and a part of their place.
 */
export function findHeadings(grid: Grid, known: KnownTrial): Headings | null {
  let best: Headings | null = null;
  for (let first = 0; first < Math.min(grid.lines.length, linesLooked); first += 1) {
    for (let last = first; last < Math.min(first + mostLines, grid.lines.length); last += 1) {
      if (!mayBeHeading(grid.lines[last]!)) break;
      const found = headingsAt(grid, first, last, known);
      if (found !== null && (best === null || isSurer(found, best))) best = found;
    }
  }
  return best;
}

/** Headings are words, days, and the numbers of plants, cuts or columns: not sums, nor what only a scale says. */
const mayBeHeading = (line: readonly (GridCell | null)[]): boolean =>
  line.every(
    (cell) => cell === null || !(cell.isFormula || (cell.kind === 'number' && !/^\d{1,3}$/.test(cell.text))),
  );

const isSurer = (one: Headings, other: Headings): boolean =>
  one.score > other.score || (one.score === other.score && one.last - one.first < other.last - other.first);

/** What the fields are by the headings in given lines; null where they name no values or nothing of a place. */
function headingsAt(grid: Grid, first: number, last: number, known: KnownTrial): Headings | null {
  const uses = usesAt(grid, first, last, known);
  const named = new Set([...uses.values()].map(({ is }) => is));
  const values = [...uses.values()].filter(({ is }) => known.variables.some(({ id }) => id === is));
  const isPlaced = ['container', 'row', 'column', 'place', 'plant'].some((name) => named.has(name));
  if (values.length === 0 || !isPlaced) return null;
  // A line above that says the unit, and nothing else that is new, is a heading too.
  const saysUnit = values.some(({ unit }) => unit !== undefined) ? 0.5 : 0;
  return { first, last, uses, score: named.size + 1 + saysUnit - alike(values) };
}

/** What the fields are by the headings in given lines, as far as these say. */
export function usesAt(grid: Grid, first: number, last: number, known: KnownTrial): Map<number, ColumnUse> {
  const uses = new Map<number, ColumnUse>();
  const bare: number[] = [];
  for (let field = 0; field < grid.width; field += 1) {
    const parts = headingParts(grid, first, last, field);
    const use = useOfHeading(parts, known);
    if (use === null) continue;
    uses.set(field, use);
    if (use.at?.plant !== undefined && !saysPlant(parts)) bare.push(field);
  }
  const named = new Set([...uses.values()].map(({ is }) => is));
  const key = keyOfNumbers(named, known);
  for (const field of bare) {
    const { at = {}, ...use } = uses.get(field)!;
    const { plant, ...more } = at;
    const now = plant === undefined || key === null ? more : { ...more, [key]: plant };
    uses.set(field, Object.keys(now).length === 0 ? use : { ...use, at: now });
  }
  return uses;
}

/**
 * What numbers alone above the values are of: beside rows that are numbered, the columns of a tank drawn out as it
 * stands; else the plants of a pot or its cuts. Null where they could be both.
 */
function keyOfNumbers(named: ReadonlySet<string>, { cuts }: KnownTrial): Key | null {
  if (named.has('row') && !named.has('column') && !named.has('place')) return 'column';
  const mayBeCuts = !named.has('cut') && cuts.length > 1;
  if (named.has('plant')) return mayBeCuts ? 'cut' : null;
  return mayBeCuts ? null : 'plant';
}

/** How many columns of values say the same as another: a line above may tell them apart. */
function alike(values: readonly ColumnUse[]): number {
  return values.length - new Set(values.map(({ is, at }) => JSON.stringify([is, at]))).size;
}

/** The texts of a field's headings from the top down, a joined cell once. */
export function headingParts(grid: Grid, first: number, last: number, field: number): string[] {
  const parts: string[] = [];
  let before: GridCell | null = null;
  for (let line = first; line <= last; line += 1) {
    const cell = grid.lines[line]?.[field] ?? null;
    if (cell !== null && cell.text !== '' && !(before?.row === cell.row && before.column === cell.column))
      parts.push(cell.text);
    before = cell;
  }
  return parts;
}
