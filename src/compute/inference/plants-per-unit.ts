import { say } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { stratumOf } from './error-degrees.ts';
import type { FittedModel } from './fitted-model.ts';

/** Numbers of plants for which the gain is shown. */
const considered = [1, 2, 3, 4, 6, 8, 12, 16, 24];

/**
 * How many weights of each unit are worth taking, from the components of variance: the variance of a
 * treatment's mean is proportional to unit variance + weight variance / weights. Null where units have
 * one weight each or a component is not known.
 * Reference: R. G. D. Steel and J. H. Torrie (1980), Principles and Procedures of Statistics, 2nd ed., section 7.9.
 */
export function plantsPerUnit(
  design: AnalysisDesign,
  fit: FittedModel,
): NonNullable<Inference['plants_per_unit']> | null {
  const stratum = stratumOf(design, design.finest);
  if (stratum === design.errors.residual) return null;
  const groups = design.errors.strata.find(({ name }) => name === stratum)!.groups;
  const below = [...design.errors.strata.map(({ name }) => name), design.errors.residual];
  if (below.indexOf(stratum) !== below.length - 2) return null;
  const variance = (name: string) =>
    fit.varianceComponents.find(({ term }) => term === name)?.variance ?? null;
  const unitVariance = variance(stratum);
  const plantVariance = variance(design.errors.residual);
  if (unitVariance === null || plantVariance === null) return null;
  const between = Math.max(0, unitVariance);
  const weighed = design.observations.length / new Set(groups).size;
  const varianceWith = (plants: number) => between + plantVariance / plants;
  return {
    weighed,
    unit_variance: unitVariance,
    plant_variance: plantVariance,
    gain: considered.map((plants) => ({
      plants,
      variance_percent: (100 * varianceWith(plants)) / varianceWith(weighed),
    })),
    ...(unitVariance < 0
      ? { reason: say('The variance between units came out below zero and is taken as zero here.') }
      : {}),
  };
}
