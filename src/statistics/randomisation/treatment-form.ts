import { choleskyFactor, choleskySolve } from '../linear-model/cholesky.ts';
import { dotProduct, matrixFromRows } from '../linear-model/matrix.ts';
import { leastCommonMultiple } from './exact-integers.ts';
import { integerAdjugate } from './integer-adjugate.ts';

/**
 * The sum of squares of treatments after blocks as a form in whole numbers: of the treatments' totals
 * adjusted for blocks, which alone change from arrangement to arrangement.
 */
export interface TreatmentForm {
  /** Approximate value of the form, proportional to the sum of squares. */
  readonly approximate: (totals: Float64Array) => number;
  /** Its exact value, on another scale; whole. */
  readonly exact: (totals: Float64Array) => bigint;
}

/**
 * The form for treatments in blocks, from the number of units of each treatment in each block
 * (`incidence[block][treatment]`); `multiple` is a common multiple of block sizes. Null where not all
 * treatments can be compared.
 *
 * Reference: John & Williams (1995) Cyclic and Computer Generated Designs, 2nd ed., section 1.3.
 */
export function treatmentForm(
  incidence: readonly (readonly number[])[],
  multiple: number,
): TreatmentForm | null {
  return proportionalForm(incidence, multiple) ?? generalForm(incidence, multiple);
}

/** Where each block holds the treatments in the same proportions: the sum of squared totals over counts. */
function proportionalForm(incidence: readonly (readonly number[])[], multiple: number): TreatmentForm | null {
  const counts = (incidence[0] ?? []).map((_, t) => incidence.reduce((sum, block) => sum + block[t]!, 0));
  const all = sumOf(counts);
  const isProportional = incidence.every((block) => {
    const units = sumOf(block);
    return block.every((count, t) => count * all === counts[t]! * units);
  });
  if (!isProportional || counts.some((count) => count === 0)) return null;
  const common = counts.reduce(leastCommonMultiple, 1);
  const weights = counts.map((count) => BigInt(common / count));
  return {
    approximate: (totals) => {
      let squares = 0;
      for (let t = 0; t < totals.length; t++) squares += (totals[t]! * totals[t]!) / counts[t]!;
      return squares / multiple;
    },
    exact: (totals) => weights.reduce((sum, weight, t) => sum + weight * BigInt(totals[t]!) ** 2n, 0n),
  };
}

function generalForm(incidence: readonly (readonly number[])[], multiple: number): TreatmentForm | null {
  const size = (incidence[0]?.length ?? 1) - 1;
  const information = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const counts of incidence) {
    const share = multiple / sumOf(counts);
    for (let a = 0; a < size; a++) {
      information[a]![a]! += multiple * counts[a]!;
      for (let b = 0; b < size; b++) information[a]![b]! -= counts[a]! * counts[b]! * share;
    }
  }
  const lower = choleskyFactor(matrixFromRows(information));
  const inverse = integerAdjugate(information.map((row) => row.map(BigInt)));
  if (lower === null || inverse === null) return null;
  return {
    approximate: (totals) => {
      const part = totals.subarray(0, size);
      return dotProduct(choleskySolve(lower, part), part);
    },
    exact: (totals) => {
      const part = Array.from(totals.subarray(0, size), BigInt);
      return inverse.reduce(
        (sum, row, i) => sum + part[i]! * row.reduce((inner, value, j) => inner + value * part[j]!, 0n),
        0n,
      );
    },
  };
}

function sumOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
