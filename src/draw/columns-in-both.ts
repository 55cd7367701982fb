import type { InBothUnits } from '../compute/format/format-quantity.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import type { FigureTable } from '../model/figure.ts';

/** A column's heading with its unit in brackets. */
export function headed(words: string, unit: string): string {
  return unit === '' ? words : `${words} (${unit})`;
}

/** The column of a quantity in a table twin, and beside it the same in US units where the unit has one. */
export function columnsInBoth(words: string, unit: string): FigureTable['columns'][number][] {
  const us = usUnit(unit);
  return [
    { heading: headed(words, unitName(unit)), numeric: true },
    ...(us ? [{ heading: headed(words, us.unit), numeric: true }] : []),
  ];
}

/** What stands under `columnsInBoth`; empty cells where there is no number. */
export function cellsInBoth(printed: InBothUnits | null, unit: string): string[] {
  return usUnit(unit) ? [printed?.metric ?? '', printed?.us ?? ''] : [printed?.metric ?? ''];
}
