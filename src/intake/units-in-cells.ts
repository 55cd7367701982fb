import { isWeight } from '../model/units.ts';
import type { WorkbookCell } from '../model/workbook.ts';
import type { Grid } from './grid.ts';
import type { KnownTrial } from './known.ts';
import type { Mapping } from './mapping.ts';
import { endingUnit } from './unit-words.ts';

/** The unit that a cell itself says, written in it or shown by its format; null for none. */
export const unitInCell = (cell: WorkbookCell): string | null =>
  endingUnit(cell.kind === 'number' ? (cell.shown ?? '') : cell.text).unit;

/**
 * The units that weights of one kind say, where some cells say one and others none; null where a bare number cannot
 * be mistaken, because none says a unit or all of them that of the trial.
 */
export function unitsBesideBare(
  cells: readonly (WorkbookCell | null)[],
  own: string,
): readonly string[] | null {
  const filled = cells
    .filter((cell) => cell !== null && /\d/.test(cell.text))
    .map((cell) => unitInCell(cell!));
  const units = [...new Set(filled.filter((unit) => unit !== null))];
  return filled.includes(null) && units.some((unit) => unit !== own) ? units : null;
}

/** By column use: the units that some of its cells say, where neither a heading nor the other cells say any. */
export function unsureUnits(grid: Grid, mapping: Mapping, known: KnownTrial): ReadonlyMap<string, string> {
  const [first, last] = mapping.lines;
  const names = ['pot_total', ...known.variables.filter(({ unit }) => isWeight(unit)).map(({ id }) => id)];
  const unsure = new Map<string, string>();
  for (const name of names) {
    const fields = [...mapping.uses].filter(([, { is, unit }]) => is === name && unit === undefined);
    const cells = fields.flatMap(([field]) =>
      grid.lines.slice(first, last + 1).map((line) => line[field] ?? null),
    );
    const own = known.variables.find(({ id }) => id === name)?.unit ?? 'g';
    const units = unitsBesideBare(cells, own);
    if (units !== null) unsure.set(name, units.join(', '));
  }
  return unsure;
}
