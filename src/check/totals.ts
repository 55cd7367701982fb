import type { HarvestRecord, Variable } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { gramsIn, isWeight } from '../model/units.ts';

/** The parts of a total: how many were weighed, and their sum in g. */
export interface Parts {
  n: number;
  sum: number;
}

/** The weighed parts among records; null where one of them was not weighed, so that the sum is unknown. */
export function partsOf(records: readonly HarvestRecord[], variable: string): Parts | null {
  const weights: number[] = [];
  for (const { status, values } of records) {
    if (status === 'not weighed') return null;
    if (status !== 'weighed') continue;
    const value = values[variable];
    if (value === null || value === undefined) return null;
    weights.push(value);
  }
  return { n: weights.length, sum: weights.reduce((sum, weight) => sum + weight, 0) };
}

/** The smallest step of the scale in g: the declared resolution, or the last digit that a total was written to. */
export function stepInGrams(variable: Variable, total: number, unit: string): number {
  if (variable.resolution !== undefined) return variable.resolution * (gramsIn[variable.unit ?? 'g'] ?? 1);
  const decimals = String(total).split('.')[1]?.length ?? 0;
  return 10 ** -decimals * (gramsIn[unit] ?? 1);
}

/** The most by which rounding can set a total apart from n parts: half a step for each part and for the total. */
export function mostByRounding(n: number, step: number): number {
  return ((n + 1) * step) / 2;
}

/** True where a total lies further from its parts than rounding explains; a hair of binary arithmetic is let pass. */
export function isBeyondRounding(total: number, { n, sum }: Parts, step: number): boolean {
  return Math.abs(total - sum) > mostByRounding(n, step) + 1e-9 * Math.max(1, Math.abs(sum));
}

/** A weight of the file's own words in g, to at most 6 significant decimals, for messages. */
export function inGrams(value: number): string {
  return `${String(Number(value.toFixed(3)))} g`;
}

/** The hint where a difference is a multiple of 9: exchanging two digits of a number always makes one. */
export function swappedDigits(total: number, sum: number): string {
  const difference = Math.abs(total - sum);
  const isMultiple = Number.isInteger(difference) && difference > 0 && difference % 9 === 0;
  return isMultiple ? say('; the difference is a multiple of 9, as when two digits are exchanged') : '';
}

/** The primary variable where it is a weight, so that totals can be compared; null otherwise. */
export function weighedVariable(variables: readonly Variable[] | undefined): Variable | null {
  const primary = variables?.[0];
  return primary !== undefined && isWeight(primary.unit) ? primary : null;
}
