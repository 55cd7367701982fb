import type { Seasons } from '../model/generated/seasons.ts';
import type { TrialWithFindings } from '../model/library.ts';
import { rowMeansWithRandomColumns } from '../statistics/two-way-table/row-means-with-random-columns.ts';
import { type TwoWayAdditive, twoWayAdditive } from '../statistics/two-way-table/two-way-additive.ts';
import { adjustedMeans, pairsOf } from './season-means.ts';
import { cellsOfTrial, type SeasonMeasure, speciesOf, type TrialCells } from './season-cells.ts';
import { interactionTest } from './interaction.ts';
import { leastTrials, steadiness } from './steadiness.ts';

const measures: readonly SeasonMeasure[] = ['per_pot', 'per_plant_set', 'kg_per_m2'];

/** What a reader may choose. */
export interface SeasonOptions {
  /** Leaves out trials without an error of their own. */
  onlyReplicated?: boolean;
  /** Weighs each trial's means by the inverse of their variance; trials without one are left out. */
  weighted?: boolean;
  /** The trials that take part; all where absent. */
  trials?: readonly string[];
  /** The cultivars that take part; all where absent. */
  cultivars?: readonly string[];
}

/**
 * Cultivars compared across seasons: one entry for each crop and measure that any trial has. The trial is
 * the replicate: cultivar + trial, additive, by least squares on the trials' own means, so that a cultivar
 * is not favoured by the trials it happened to be in. Cultivars that no chain of shared trials connects are
 * never compared.
 *
 * Reference: H. D. Patterson (1978), Journal of the National Institute of Agricultural Botany 14, 401-412.
 */
export function seasons(trials: readonly TrialWithFindings[], options: SeasonOptions = {}): Seasons[] {
  const finished = oldestFirst(trials).filter(({ findings }) => findings !== null);
  // A unit is never mixed with another: a crop measured in two units is two crops here.
  const groups = Map.groupBy(finished, ({ trial, findings }) =>
    JSON.stringify([speciesOf(trial), findings!.variable.unit]),
  );
  return [...groups].flatMap(([key, items]) =>
    measures.flatMap((measure) => {
      const parts = items.flatMap((item) => partOf(item, measure, options));
      if (parts.length === 0) return [];
      const [species, unit] = JSON.parse(key) as [string, string];
      return [compared({ species, unit: measure === 'kg_per_m2' ? 'kg/m2' : unit, measure }, parts, options)];
    }),
  );
}

function oldestFirst(trials: readonly TrialWithFindings[]): TrialWithFindings[] {
  const day = ({ trial }: TrialWithFindings) =>
    trial.metadata.dates?.cuts?.at(-1) ?? String(trial.metadata.season.year);
  const key = (item: TrialWithFindings) => `${day(item)} ${item.trial.id}`;
  return [...trials].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

function partOf(item: TrialWithFindings, measure: SeasonMeasure, options: SeasonOptions): TrialCells[] {
  if (options.trials && !options.trials.includes(item.trial.id)) return [];
  const part = cellsOfTrial(item, measure);
  if (part === null || (options.onlyReplicated && !part.trial.replicated)) return [];
  const cells = part.cells.filter(
    ({ cultivar, se }) =>
      (!options.cultivars || options.cultivars.includes(cultivar)) && (!options.weighted || (se ?? 0) > 0),
  );
  return cells.length === 0 ? [] : [{ ...part, cells, trial: { ...part.trial, cultivars: cells.length } }];
}

function compared(
  about: Pick<Seasons, 'species' | 'measure' | 'unit'>,
  parts: readonly TrialCells[],
  options: SeasonOptions,
): Seasons {
  const cells = parts.flatMap((part) => part.cells);
  const cultivars = [...new Set(cells.map(({ cultivar }) => cultivar))];
  const column = new Map(parts.map(({ trial }, index) => [trial.id, index]));
  const table = cells.map(({ cultivar, trial, mean, se }) => ({
    row: cultivars.indexOf(cultivar),
    column: column.get(trial)!,
    value: mean,
    ...(options.weighted ? { weight: 1 / se! ** 2 } : {}),
  }));
  const fit = twoWayAdditive(table);
  const check = commonestCheck(parts);
  const verdict = verdictOf(fit, parts.length, parts.filter((part) => part.cells.length > 1).length);
  const random = verdict.verdict === 'compared' ? rowMeansWithRandomColumns(table) : null;
  return {
    ...about,
    trials: parts.map(({ trial }) => trial),
    cells,
    linked_sets: fit.sets.map(({ rows }) => rows.map((row) => cultivars[row]!)),
    anova: fit.anova.map((row) => ({
      term: row.term === 'columns' ? 'trial' : row.term === 'rows' ? 'cultivar' : 'residual',
      df: row.df,
      sum_of_squares: row.sumOfSquares,
      mean_square: row.meanSquare,
      f: row.f,
      p: row.p,
    })),
    adjusted_means: adjustedMeans(fit, cultivars, check),
    differences: pairsOf(fit, cultivars),
    stability: steadiness(fit, table, cultivars, parts),
    check,
    interaction: interactionTest(fit, parts),
    random_trials:
      random === null || 'reason' in random
        ? []
        : random.means.map(({ row, estimate, se, df }) => ({
            cultivar: cultivars[row]!,
            mean: estimate,
            se,
            df,
          })),
    ...verdict,
  };
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

function verdictOf(
  fit: TwoWayAdditive,
  trials: number,
  sharing: number,
): Pick<Seasons, 'verdict' | 'reason'> {
  const none = (reason: string) => ({ verdict: 'not compared' as const, reason });
  if (trials < 2) return none('There is one trial only, and across seasons the trial is the replicate.');
  if (fit.differences.length === 0) {
    return none('No two cultivars stood in trials that a chain of shared cultivars connects.');
  }
  if (fit.reason !== null) {
    return none(
      'The cultivars did not meet in enough trials to show how much their differences vary from one trial to the next.',
    );
  }
  const reasons: string[] = [];
  if (fit.sets.length > 1) {
    reasons.push(
      `There are ${fit.sets.length} sets of cultivars that no chain of shared trials connects: none of one is compared with any of another.`,
    );
  }
  if (sharing < leastTrials) {
    reasons.push(
      `With fewer than ${leastTrials} trials that grew several cultivars it cannot be judged how steady a cultivar is.`,
    );
  }
  return { verdict: 'compared', reason: reasons.join(' ') };
}
