import { describe, expect, it } from 'vitest';
import { digitsOfDifference } from '../../../src/compute/format/digits-of-difference.ts';
import { digitsOfMean } from '../../../src/compute/format/digits-of-mean.ts';
import { digitsOfUncertainty } from '../../../src/compute/format/digits-of-uncertainty.ts';
import { digitsOfValue } from '../../../src/compute/format/digits-of-value.ts';

describe('digits carried from the scale', () => {
  it.each([
    [1, 0],
    [5, 0],
    [10, 0],
    [0.5, 1],
    [0.1, 1],
    [0.25, 2],
    [0.3, 1],
    [2.8349523125, 0],
  ])('prints a reading with steps of %s with %s decimals', (step, digits) => {
    expect(digitsOfValue(step)).toBe(digits);
  });

  // u = r / sqrt(12 n), by hand: 5/12 = 0.417; 1/12 = 0.083; 1/sqrt(48) = 0.144; 1/sqrt(1200) = 0.029; 0.1/12 = 0.0083
  it.each([
    [5, 12, 0],
    [1, 12, 1],
    [1, 4, 0],
    [1, 100, 1],
    [0.1, 12, 2],
    [5, 1, 0],
    [10, 3, 0],
  ])('prints a mean of readings in steps of %s g, n = %s, with %s decimals', (step, n, digits) => {
    expect(digitsOfMean(step, n)).toBe(digits);
  });

  it('never prints a digit finer than the rounding leaves certain', () => {
    for (const step of [0.01, 0.1, 0.5, 1, 2, 5, 10]) {
      for (let n = 2; n < 400; n += 7) {
        const digits = digitsOfMean(step, n);
        const uncertainty = step / Math.sqrt(12 * n);
        const place = 10 ** -digits;
        expect(place >= uncertainty - 1e-12 || digits === digitsOfValue(step)).toBe(true);
      }
    }
  });

  it('keeps a power of ten at its own place', () => {
    expect([100, 10, 1, 0.1, 0.01].map(digitsOfUncertainty)).toEqual([-2, -1, 0, 1, 2]);
  });

  it('prints a difference more coarsely than its means, their roundings adding up', () => {
    expect(digitsOfMean(1, 12)).toBe(1); // 0.083
    expect(digitsOfDifference(1, 12, 12)).toBe(0); // 0.118
    expect(digitsOfDifference(1, 24, 24)).toBe(1); // 0.083
  });

  it('names its need when it is misused', () => {
    expect(() => digitsOfValue(0)).toThrow('digitsOfValue requires a positive step, not 0');
    expect(() => digitsOfMean(1, 0)).toThrow('at least one reading');
    expect(() => digitsOfUncertainty(Number.NaN)).toThrow('positive number');
  });
});
