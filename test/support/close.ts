import { expect } from 'vitest';

/**
 * Expects a number to equal another within a relative tolerance (absolute where the expected number is 0).
 * A failure prints what was computed, what was expected, by how much they differ and what was allowed.
 */
export function expectClose(
  actual: number | null | undefined,
  expected: number,
  relative: number,
  what = '',
): void {
  const difference = Math.abs((actual ?? NaN) - expected);
  const error = expected === 0 ? difference : difference / Math.abs(expected);
  const same = actual === expected || error <= relative;
  expect(
    same,
    `${what} computed ${actual}, expected ${expected}, relative error ${error}, allowed ${relative}`,
  ).toBe(true);
}

/** Expects a number to equal another within an absolute tolerance. */
export function expectWithin(
  actual: number | null | undefined,
  expected: number,
  absolute: number,
  what = '',
): void {
  const error = Math.abs((actual ?? NaN) - expected);
  const same = actual === expected || error <= absolute;
  expect(same, `${what} computed ${actual}, expected ${expected}, error ${error}, allowed ${absolute}`).toBe(
    true,
  );
}

/** How many leading digits of a number agree with its certified value: minus log10 of the relative error, at most 16. */
export function digitsOfAgreement(actual: number, certified: number): number {
  const error = certified === 0 ? Math.abs(actual) : Math.abs(actual - certified) / Math.abs(certified);
  return error === 0 ? 16 : Math.min(16, -Math.log10(error));
}
