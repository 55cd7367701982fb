import { gramsIn, isWeight } from '../../model/units.ts';
import type { Variable } from '../../model/trial.ts';

/**
 * The smallest step of a variable's scale in the unit that is printed: g for weights, else the variable's
 * own; null where the trial does not say.
 */
export function printedResolution(variable: Variable | undefined): number | null {
  const { resolution, unit } = variable ?? {};
  if (resolution === undefined) return null;
  return isWeight(unit) ? resolution * gramsIn[unit!]! : resolution;
}
