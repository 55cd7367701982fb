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
  const beside = winsAndLosses(parts);
  const withResiduals = cells.map((cell, at) => ({ ...cell, residual: fit.residuals[at]! }));
  const byRow = Map.groupBy(withResiduals, ({ row }) => row);
  return fit.sets.flatMap((set) => {
    // A trial that grew one cultivar of the set has nothing to hold it against.
    const shared = set.columns.filter((column) => (counts.get(column) ?? 0) > 1);
    if (shared.length < leastTrials) return [];
    const index = new Map(set.columns.map((column, at) => [column, set.columnMeans[at]!]));
    const sharing = new Set(shared);
    const ofSet = set.rows.map((row) => {
      const own = (byRow.get(row) ?? []).filter(({ column }) => sharing.has(column));
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
          ...(beside.get(cultivars[row]!) ?? { wins: 0, losses: 0 }),
        },
      ];
    });
  });
}

/** In how many trials each cultivar did better, and worse, than the check of that trial. */
function winsAndLosses(parts: readonly TrialCells[]): Map<string, { wins: number; losses: number }> {
  const counts = new Map<string, { wins: number; losses: number }>();
  for (const { cells, check } of parts) {
    const ofCheck = cells.find(({ cultivar }) => cultivar === check)?.mean;
    if (ofCheck === undefined) continue;
    for (const { cultivar, mean } of cells) {
      const { wins, losses } = counts.get(cultivar) ?? { wins: 0, losses: 0 };
      counts.set(cultivar, {
        wins: wins + (mean > ofCheck ? 1 : 0),
        losses: losses + (mean < ofCheck ? 1 : 0),
      });
    }
  }
  return counts;
}
