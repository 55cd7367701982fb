import { coverOfPosition } from '../compute/growing-area.ts';
import type { Findings, TreatmentDescription } from '../model/findings.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { Factor, Trial } from '../model/trial.ts';
import { meanOf } from '../statistics/mean.ts';

export type SeasonMeasure = Seasons['measure'];

/** A mean of one level of the cultivar factor, or of a whole trial of one cultivar. */
export interface OwnMean {
  /** Null where the trial grew one cultivar. */
  level: string | null;
  mean: number;
  se: number | null;
  n: number;
}

/** A trial's means of its cultivars, and its own error of one such mean where it has one. */
export interface OwnMeans {
  means: OwnMean[];
  error: { variance: number; df: number } | null;
}

/**
 * The means of a trial's cultivars over all cuts: those of its analysis where it was tested; else plain
 * means, other factors averaged over alike. Yields by area are those by the pot over a pot's part of the
 * cover where all pots have the same.
 */
export function ownMeans(
  trial: Trial,
  findings: Findings,
  factor: Factor | undefined,
  measure: SeasonMeasure,
): OwnMeans {
  if (!factor) {
    const { cultivar } = trial.metadata.crop;
    return {
      means: cultivar === undefined ? [] : plainMean(findings.treatments, null, measure),
      error: null,
    };
  }
  if (measure !== 'kg_per_m2') return testedMeans(findings, factor, measure) ?? plain();
  const share = commonCover(trial);
  const perPot = share === null ? null : testedMeans(findings, factor, 'per_pot');
  const known = findings.treatments.every(({ kg_per_m2 }) => kg_per_m2 !== null);
  return perPot !== null && known ? scaled(perPot, 1 / (1000 * share!)) : plain();

  function plain(): OwnMeans {
    const means = factor!.levels.flatMap(({ id }) => {
      const ofLevel = findings.treatments.filter(({ treatment }) => treatment[factor!.id] === id);
      return plainMean(ofLevel, id, measure);
    });
    return { means, error: null };
  }
}

function testedMeans(
  findings: Findings,
  factor: Factor,
  measure: 'per_pot' | 'per_plant_set',
): OwnMeans | null {
  const entry = findings.inference.find((each) => each.measure === measure && each.cut === 'all');
  if (!entry) return null;
  const replicates = entry.units.find((unit) => unit.factor === factor.id)?.replicates ?? {};
  const ofFactor = (treatment: Record<string, string>) => Object.keys(treatment).join() === factor.id;
  const means = entry.means.flatMap(({ treatment, mean, se }): OwnMean[] => {
    if (!ofFactor(treatment) || mean === null || se === null) return [];
    const level = treatment[factor.id]!;
    return [{ level, mean, se, n: replicates[level] ?? 0 }];
  });
  const pairs = entry.differences.filter(({ a, se, df }) => ofFactor(a) && se !== null && df !== null);
  if (means.length === 0) return null;
  // Half the variance of a difference is that of a mean without what the trial's blocks share.
  const error = {
    variance: meanOf(pairs.map(({ se }) => se! ** 2 / 2)),
    df: meanOf(pairs.map(({ df }) => df!)),
  };
  return { means, error: pairs.length === 0 ? null : error };
}

function plainMean(
  treatments: readonly TreatmentDescription[],
  level: string | null,
  measure: SeasonMeasure,
): OwnMean[] {
  const values = treatments.flatMap((each) => {
    const mean = measure === 'kg_per_m2' ? each.kg_per_m2 : (each[measure]?.mean ?? null);
    const n = measure === 'kg_per_m2' ? each.pots : (each[measure]?.n ?? 0);
    return mean === null ? [] : [{ mean, n }];
  });
  // A mean over some of the treatments only would not be the trial's.
  if (values.length === 0 || values.length < treatments.length) return [];
  const n = values.reduce((total, each) => total + each.n, 0);
  return [{ level, mean: meanOf(values.map(({ mean }) => mean)), se: null, n }];
}

/** The part of the cover that every pot has, in m2; null where it is not known, or not the same for all. */
function commonCover({ metadata, positions }: Trial): number | null {
  const planted = new Set(positions.map(({ container }) => container));
  const shares = metadata.containers.filter(({ id }) => planted.has(id)).map(coverOfPosition);
  const [first = null] = shares;
  if (first === null) return null;
  return shares.every((share) => share !== null && Math.abs(share - first) <= 1e-9 * first) ? first : null;
}

function scaled({ means, error }: OwnMeans, factor: number): OwnMeans {
  return {
    means: means.map((each) => ({
      ...each,
      mean: each.mean * factor,
      se: each.se === null ? null : each.se * factor,
    })),
    error: error && { ...error, variance: error.variance * factor ** 2 },
  };
}
