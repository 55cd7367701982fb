import type { Seasons } from '../model/generated/seasons.ts';
import { rowMeansWithRandomColumns } from '../statistics/two-way-table/row-means-with-random-columns.ts';
import { type TwoWayAdditive, twoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';
import { interactionTest } from './interaction.ts';
import type { TrialCells } from './season-cells.ts';
import type { SeasonGroup } from './season-groups.ts';
import { adjustedMeans, pairsOf } from './season-means.ts';
import { seasonVerdict } from './season-verdict.ts';
import { steadiness } from './steadiness.ts';
import { trialsDiffer } from './trials-differ.ts';

/** What a reader may choose. */
export interface SeasonOptions {
  /** Leaves out trials without an error of their own. */
  onlyReplicated?: boolean;
  /** Weighs each trial's means by the inverse of their variance; means without one are left out. */
  weighted?: boolean;
  /** The trials that take part; all where absent. */
  trials?: readonly string[];
  /** The cultivars that take part; all where absent. */
  cultivars?: readonly string[];
  /** False leaves out the means with trials as a sample, which take longest to compute. */
  randomTrials?: boolean;
  /**
   * Means and differences with the trials as a sample of others that might have been (REML), not as they were:
   * what a trial is like then adds to the error of a mean. Where that cannot be fitted, random_trials is empty
   * and the means are those of the trials as they were. Weights are not used.
   */
  trialsAsSample?: boolean;
}

/** One crop and measure compared, by those trials and cultivars that the options leave; null where they leave none. */
export function compareGroup(
  { species, measure, unit, parts: all }: SeasonGroup,
  options: SeasonOptions = {},
): Seasons | null {
  const parts = all.flatMap((part) => partOf(part, options));
  if (parts.length === 0) return null;
  const cells = parts.flatMap((part) => part.cells);
  const cultivars = [...new Set(cells.map(({ cultivar }) => cultivar))];
  const table = tableOf(parts, cultivars, options);
  const fit = twoWayAdditive(table);
  const trialMeans = new Map(
    fit.sets.flatMap(({ columns, columnMeans }) =>
      columns.map((column, at) => [column, columnMeans[at]!] as const),
    ),
  );
  const check = commonestCheck(parts);
  const verdict = seasonVerdict(fit, parts);
  const wanted = options.trialsAsSample === true || options.randomTrials !== false;
  const random = verdict.verdict === 'compared' && wanted ? fitted(rowMeansWithRandomColumns(table)) : null;
  const shown = options.trialsAsSample && random ? { ...random, sets: fit.sets } : fit;
  const differences = pairsOf(shown, cultivars);
  return {
    species,
    measure,
    unit,
    trials: parts.map(({ trial }, column) => ({ ...trial, adjusted_mean: trialMeans.get(column) ?? null })),
    trials_differ: trialsDiffer(
      parts.map(({ trial }) => trial),
      measure,
    ),
    cells,
    linked_sets: fit.sets.map(({ rows }) => rows.map((row) => cultivars[row]!)),
    anova: anovaOf(fit),
    adjusted_means: adjustedMeans(shown, cultivars, check, differences),
    differences,
    stability: steadiness(fit, table, cultivars, parts),
    check,
    interaction: interactionTest(parts),
    random_trials: (random?.means ?? []).map(({ row, estimate, se, df }) => ({
      cultivar: cultivars[row]!,
      mean: estimate,
      se,
      df,
    })),
    ...verdict,
  };
}

/** Null where the variances could not be told apart. */
function fitted(random: ReturnType<typeof rowMeansWithRandomColumns>) {
  return 'reason' in random ? null : random;
}

function partOf(part: TrialCells, options: SeasonOptions): TrialCells[] {
  if (options.trials && !options.trials.includes(part.trial.id)) return [];
  if (options.onlyReplicated && !part.trial.replicated) return [];
  const cells = part.cells.filter(
    ({ cultivar, se }) =>
      (!options.cultivars || options.cultivars.includes(cultivar)) && (!options.weighted || (se ?? 0) > 0),
  );
  return cells.length === 0 ? [] : [{ ...part, cells, trial: { ...part.trial, cultivars: cells.length } }];
}

function tableOf(parts: readonly TrialCells[], cultivars: readonly string[], options: SeasonOptions) {
  const rows = new Map(cultivars.map((cultivar, row) => [cultivar, row]));
  return parts.flatMap(({ cells }, column) =>
    cells.map(({ cultivar, mean, se }) => ({
      row: rows.get(cultivar)!,
      column,
      value: mean,
      ...(options.weighted ? { weight: 1 / se! ** 2 } : {}),
    })),
  );
}

const terms = { columns: 'trial', rows: 'cultivar', residual: 'residual' } as const;

function anovaOf(fit: TwoWayAdditive): Seasons['anova'] {
  return fit.anova.map((row) => ({
    term: terms[row.term],
    df: row.df,
    sum_of_squares: row.sumOfSquares,
    mean_square: row.meanSquare,
    f: row.f,
    p: row.p,
  }));
}

/** The check cultivar that most trials name, the first of them where several tie. */
function commonestCheck(parts: readonly TrialCells[]): string | null {
  const counts = new Map<string, number>();
  for (const { check } of parts) if (check !== null) counts.set(check, (counts.get(check) ?? 0) + 1);
  return [...counts].reduce<[string | null, number]>(
    (most, each) => (each[1] > most[1] ? each : most),
    [null, 0],
  )[0];
}
