import type { Findings, TreatmentDescription } from '../model/findings.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { TrialWithFindings } from '../model/library.ts';
import type { Factor, Trial } from '../model/trial.ts';
import { meanOf } from '../statistics/mean.ts';

export type SeasonMeasure = Seasons['measure'];
type SeasonTrial = Seasons['trials'][number];
type SeasonCell = Seasons['cells'][number];

/** What one trial brings to a comparison. */
export interface TrialCells {
  trial: SeasonTrial;
  cells: SeasonCell[];
  check: string | null;
  /** The trial's own error of one cultivar mean, for the interaction: its variance and degrees of freedom. */
  error: { variance: number; df: number } | null;
}

/** The crop that a trial belongs to: its species, or its common name where none is given. */
export function speciesOf({ metadata }: Trial): string {
  return metadata.crop.species ?? metadata.crop.name;
}

/** A trial's own means of its cultivars by one measure, over all cuts; null where it has none. */
export function cellsOfTrial(
  { trial, findings }: TrialWithFindings,
  measure: SeasonMeasure,
): TrialCells | null {
  if (findings === null) return null;
  const factor = (trial.metadata.factors ?? []).find(({ kind }) => kind === 'cultivar');
  const means = factor ? meansOfFactor(findings, factor, measure) : meanOfSingle(trial, findings, measure);
  if (means.cells.length === 0) return null;
  const check = factor?.check ?? null;
  const ofCheck = means.cells.find(({ cultivar }) => cultivar === check)?.mean ?? null;
  const others = (trial.metadata.factors ?? []).filter(({ id }) => id !== factor?.id);
  return {
    trial: {
      id: trial.id,
      season: `${trial.metadata.season.name} ${trial.metadata.season.year}`,
      cultivars: means.cells.length,
      replicated: means.error !== null,
      setting: trial.metadata.site.setting,
      days:
        findings.treatments[0]?.days_from_transplanting ?? findings.treatments[0]?.days_from_sowing ?? null,
      plants_per_pot: [...new Set(trial.positions.map(({ plants }) => plants))]
        .sort((a, b) => a - b)
        .join(', '),
      averaged_over: others.map(({ name }) => name.toLowerCase()).join(', '),
      cuts: trial.metadata.dates?.cuts?.length ?? 1,
    },
    cells: means.cells.map((cell) => ({
      ...cell,
      trial: trial.id,
      percent_of_check: ofCheck === null || ofCheck <= 0 ? null : (100 * cell.mean) / ofCheck,
    })),
    check,
    error: means.error,
  };
}

interface OwnMeans {
  cells: Omit<SeasonCell, 'trial' | 'percent_of_check'>[];
  error: TrialCells['error'];
}

/** Adjusted means where the trial was tested, else plain means, other factors averaged over alike. */
function meansOfFactor(findings: Findings, factor: Factor, measure: SeasonMeasure): OwnMeans {
  const entry = findings.inference.find((each) => each.measure === measure && each.cut === 'all');
  const replicates = entry?.units.find((unit) => unit.factor === factor.id)?.replicates ?? {};
  const tested = (entry?.means ?? []).filter(
    ({ treatment, mean, se }) => Object.keys(treatment).join() === factor.id && mean !== null && se !== null,
  );
  if (tested.length > 0) {
    const cells = tested.map(({ treatment, mean, se }) => {
      const cultivar = treatment[factor.id]!;
      return { cultivar, mean: mean!, se, n: replicates[cultivar] ?? 0 };
    });
    const pair = entry!.differences.find(
      ({ a, se, df }) => Object.keys(a).join() === factor.id && se !== null && df !== null,
    );
    return { cells, error: pair ? { variance: pair.se! ** 2 / 2, df: pair.df! } : null };
  }
  const cells = factor.levels.flatMap(({ id }) =>
    plainMean(
      findings.treatments.filter(({ treatment }) => treatment[factor.id] === id),
      id,
      measure,
    ),
  );
  return { cells, error: null };
}

function meanOfSingle(trial: Trial, findings: Findings, measure: SeasonMeasure): OwnMeans {
  const { cultivar } = trial.metadata.crop;
  if (cultivar === undefined) return { cells: [], error: null };
  return { cells: plainMean(findings.treatments, cultivar, measure), error: null };
}

function plainMean(
  treatments: readonly TreatmentDescription[],
  cultivar: string,
  measure: SeasonMeasure,
): OwnMeans['cells'] {
  const values = treatments.flatMap((each) => {
    const mean = measure === 'kg_per_m2' ? each.kg_per_m2 : (each[measure]?.mean ?? null);
    const n = measure === 'kg_per_m2' ? each.pots : (each[measure]?.n ?? 0);
    return mean === null ? [] : [{ mean, n }];
  });
  // A mean over some of the treatments only would not be the trial's.
  if (values.length === 0 || values.length < treatments.length) return [];
  const n = values.reduce((total, each) => total + each.n, 0);
  return [{ cultivar, mean: meanOf(values.map(({ mean }) => mean)), se: null, n }];
}
