import { isWeight } from '../model/units.ts';
import type { Variable } from '../model/trial.ts';

/** The unit that a variable is published in: g for every weight, `1` for a plain number. */
export function publishedUnit(variable: Variable): string {
  if (isWeight(variable.unit)) return 'g';
  return variable.unit ?? '1';
}
