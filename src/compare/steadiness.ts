import type { Seasons } from '../model/generated/seasons.ts';
import { finlayWilkinson } from '../statistics/two-way-table/finlay-wilkinson.ts';
import { shuklaStabilityVariance } from '../statistics/two-way-table/shukla-stability-variance.ts';
import type { TwoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';
import { wrickeEcovalence } from '../statistics/two-way-table/wricke-ecovalence.ts';
import type { TrialCells } from './season-cells.ts';

/** With fewer trials than this, steadiness cannot be judged. Common practice, no source. */
export const leastTrials = 4;

interface Cell {
  row: number;
  column: number;
  value: number;
}

/** How steady each cultivar is that was in at least four trials of its linked set with others. */
export function steadiness(
  fit: TwoWayAdditive,
  cells: readonly Cell[],
  cultivars: readonly string[],
  parts: readonly TrialCells[],
): Seasons['stability'] {
  const counts = new Map<number, number>();
  for (const { column } of cells) counts.set(column, (counts.get(column) ?? 0) + 1);
  return fit.sets.flatMap((set) => {
    // A trial that grew one cultivar of the set has nothing to hold it against.
    const shared = set.columns.filter((column) => (counts.get(column) ?? 0) > 1);
    if (shared.length < leastTrials) return [];
    const index = new Map(set.columns.map((column, at) => [column, set.columnMeans[at]!]));
    const ofSet = set.rows.map((row) => {
      const own = cells.flatMap((cell, at) =>
        cell.row === row && shared.includes(cell.column) ? [{ ...cell, residual: fit.residuals[at]! }] : [],
      );
      return { row, own, ecovalence: wrickeEcovalence(own.map(({ residual }) => residual)) };
    });
    const complete = ofSet.every(({ own }) => own.length === shared.length);
    const shukla = complete
      ? shuklaStabilityVariance(
          ofSet.map(({ ecovalence }) => ecovalence),
          shared.length,
        ).values
      : null;
    return ofSet.flatMap(({ row, own, ecovalence }, at) => {
      if (own.length < leastTrials) return [];
      const line = finlayWilkinson(
        own.map(({ value }) => value),
        own.map(({ column }) => index.get(column)!),
      );
      return [
        {
          cultivar: cultivars[row]!,
          trials: own.length,
          regression_slope: line.slope,
          slope_se: line.slope === null ? null : line.se,
          deviation_mean_square: line.slope === null ? null : line.deviationMeanSquare,
          ecovalence,
          stability_variance: shukla?.[at] ?? null,
          ...winsAndLosses(cultivars[row]!, parts),
        },
      ];
    });
  });
}

/** In how many trials a cultivar did better, and worse, than the check of that trial. */
function winsAndLosses(cultivar: string, parts: readonly TrialCells[]): { wins: number; losses: number } {
  let [wins, losses] = [0, 0];
  for (const { cells, check } of parts) {
    if (check === null || check === cultivar) continue;
    const own = cells.find((cell) => cell.cultivar === cultivar)?.mean;
    const other = cells.find((cell) => cell.cultivar === check)?.mean;
    if (own === undefined || other === undefined) continue;
    if (own > other) wins += 1;
    if (own < other) losses += 1;
  }
  return { wins, losses };
}
