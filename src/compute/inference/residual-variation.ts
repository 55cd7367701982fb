import { meanOf } from '../../statistics/mean.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import { stratumOf } from './error-degrees.ts';
import type { FittedModel } from './fitted-model.ts';

/**
 * The coefficient of variation between the units of the finest factor, in percent: the standard deviation of
 * a unit's mean about what blocks and treatments make of it, over the general mean.
 */
export function residualVariation(design: AnalysisDesign, fit: FittedModel, units: number): number | null {
  const variance = varianceOfUnitMean(design, fit, units);
  const mean = meanOf(design.observations.map(({ value }) => value));
  return variance === null || mean <= 0 ? null : (100 * Math.sqrt(variance)) / mean;
}

/** The variance of the mean of one unit of the finest factor, from the components at and below its stratum. */
function varianceOfUnitMean(design: AnalysisDesign, fit: FittedModel, units: number): number | null {
  const names = [...design.errors.strata.map(({ name }) => name), design.errors.residual];
  const at = names.indexOf(stratumOf(design, design.finest));
  let total = 0;
  for (const name of names.slice(at)) {
    const component = fit.varianceComponents.find(({ term }) => term === name);
    if (component?.variance === undefined || component.variance === null) return null;
    const groups = design.errors.strata.find((stratum) => stratum.name === name)?.groups;
    const count = groups ? new Set(groups).size : design.observations.length;
    total += (component.variance * units) / count;
  }
  return total > 0 ? total : null;
}
