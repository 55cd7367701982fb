import { tUpperQuantile } from '../../statistics/distributions/student-t.ts';
import type { AnalysisDesign } from './analysis-design.ts';
import type { Family } from './families.ts';
import type { FittedModel } from './fitted-model.ts';

/**
 * Fisher's protected least significant difference: t times the standard error of a difference, in the unit
 * of the means. Only for a trial of one factor whose F is significant and whose differences all have the same
 * standard error and degrees of freedom (equal replication); null elsewhere.
 * Reference: R. A. Fisher (1935), The Design of Experiments, section 24.
 */
export function leastSignificantDifference(
  design: AnalysisDesign,
  fit: FittedModel,
  families: readonly Family[],
  alpha: number,
): number | null {
  const family = families[0];
  if (design.terms.length !== 1 || family === undefined || family.untested !== null) return null;
  const row = fit.anova.find(({ term }) => term === family.term.name);
  if (row?.p === null || row?.p === undefined || row.p >= alpha) return null;
  const first = family.differences[0];
  if (first?.se === null || first?.df === null || first === undefined) return null;
  const equal = family.differences.every(({ se, df }) => close(se, first.se!) && close(df, first.df!));
  return equal ? tUpperQuantile(alpha / 2, first.df) * first.se : null;
}

function close(value: number | null, other: number): boolean {
  return value !== null && Math.abs(value - other) <= 1e-9 * other;
}
