import { say } from '../../model/say.ts';
import type { Treatment } from '../../model/trial.ts';
import type { SeededRandom } from '../../statistics/seeded-random.ts';
import { drawLatinSquare } from './draw-latin-square.ts';
import { type LotPlace, type LotUnit, unitsOf } from './lot-place.ts';
import { combinations, type LotFactor } from './treatment-list.ts';

/**
 * Draws a Latin square for each container, in their order. A plot's row and column are the ranks of its first row and
 * first column among those of its container.
 */
export function drawSquares<T extends LotPlace>(
  places: readonly T[],
  factors: readonly (LotFactor & { unit: LotUnit })[],
  random: SeededRandom,
): { treatments: Map<T, Treatment> } | { reason: string } {
  const [unit, other] = [...new Set(factors.map((factor) => factor.unit))];
  if (unit === undefined || other !== undefined || unit === 'container')
    return { reason: say('a Latin square is drawn for the plots or the positions of a container') };
  const letters = combinations(factors);
  const treatments = new Map<T, Treatment>();
  for (const container of unitsOf(places, 'container')) {
    const units = unitsOf(container, unit);
    const rows = ranks(units.map((members) => Math.min(...members.map(({ row }) => row))));
    const columns = ranks(units.map((members) => Math.min(...members.map(({ column }) => column))));
    if (!isSquare(rows, columns, letters.length)) {
      const size = letters.length;
      return {
        reason:
          unit === 'plot'
            ? say('{size} treatments need {size} rows and {size} columns of plots in each container', {
                size,
              })
            : say('{size} treatments need {size} rows and {size} columns of positions in each container', {
                size,
              }),
      };
    }
    const square = drawLatinSquare(letters.length, random);
    units.forEach((members, index) => {
      const treatment = letters[square[rows[index]!]![columns[index]!]!]!;
      for (const place of members) treatments.set(place, treatment);
    });
  }
  return { treatments };
}

/** The place of each value among the distinct values, from 0. */
function ranks(values: readonly number[]): number[] {
  const distinct = [...new Set(values)].sort((a, b) => a - b);
  return values.map((value) => distinct.indexOf(value));
}

/** Whether every cell of a square of this size is held by one unit. */
function isSquare(rows: readonly number[], columns: readonly number[], size: number): boolean {
  const cells = new Set(rows.map((row, index) => row * size + columns[index]!));
  const inside = [...rows, ...columns].every((rank) => rank < size);
  return inside && cells.size === size * size && rows.length === size * size;
}
