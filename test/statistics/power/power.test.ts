import { expect, test } from 'vitest';
import { detectableDifference } from '../../../src/statistics/power/detectable-difference.ts';
import {
  type Comparison,
  errorDegreesOfFreedom,
  powerOfComparison,
} from '../../../src/statistics/power/power-of-comparison.ts';
import { replicatesNeeded } from '../../../src/statistics/power/replicates-needed.ts';
import { expectClose, expectWithin } from '../../support/close.ts';
import { numberFromR, numbersFromR } from '../../support/r.ts';

const pair: Comparison = {
  differencePercent: 20,
  cvPercent: 15,
  treatments: 2,
  design: 'completely randomised',
  alpha: 0.05,
  test: 't',
};

test('error degrees of freedom follow the design', () => {
  expect(errorDegreesOfFreedom('completely randomised', 4, 5)).toBe(16);
  expect(errorDegreesOfFreedom('randomised blocks', 4, 5)).toBe(12);
});

test('power for two groups agrees with power.t.test in R, both tails counted', async () => {
  for (const replicates of [2, 5, 10, 40]) {
    const code = 'power.t.test(n = n, delta = 20, sd = 15, strict = TRUE)$power';
    expectWithin(powerOfComparison(pair, replicates), await numberFromR(code, { n: replicates }), 1e-9);
  }
});

test('power of F agrees with noncentral F in R: two of five treatments apart, the rest midway', async () => {
  const comparison: Comparison = { ...pair, treatments: 5, design: 'randomised blocks', test: 'F' };
  const expected = await numbersFromR(
    'sapply(c(3, 6, 12), function(r) pf(qf(0.05, 4, 4 * (r - 1), lower.tail = FALSE), 4, 4 * (r - 1), r * (20 / 15)^2 / 2, lower.tail = FALSE))',
  );
  [3, 6, 12].forEach((replicates, index) => {
    expectWithin(powerOfComparison(comparison, replicates), expected[index]!, 1e-8);
  });
});

test('with two treatments the t test and the F test have one power', () => {
  expectClose(powerOfComparison(pair, 7), powerOfComparison({ ...pair, test: 'F' }, 7), 1e-10);
});

test('the replicates needed for two groups are those of power.t.test, rounded up', async () => {
  for (const [differencePercent, power] of [
    [10, 0.8],
    [20, 0.8],
    [30, 0.9],
    [15, 0.9],
  ] as const) {
    const needed = replicatesNeeded({ ...pair, differencePercent }, power);
    const code = 'ceiling(power.t.test(delta = d, sd = 15, power = p, strict = TRUE, tol = 1e-9)$n)';
    expect(needed.replicates).toBe(await numberFromR(code, { d: differencePercent, p: power }));
  }
});

test('a replicate fewer would not do, and more treatments or blocks change the error degrees of freedom', () => {
  for (const treatments of [2, 4, 8]) {
    for (const design of ['completely randomised', 'randomised blocks'] as const) {
      for (const kind of ['t', 'F'] as const) {
        const comparison: Comparison = { ...pair, treatments, design, test: kind };
        const needed = replicatesNeeded(comparison, 0.8);
        expect(needed.replicates).toBeGreaterThan(2);
        expect(needed.power).toBeGreaterThanOrEqual(0.8);
        expect(powerOfComparison(comparison, needed.replicates! - 1)).toBeLessThan(0.8);
        expect(needed.df).toBe(errorDegreesOfFreedom(design, treatments, needed.replicates!));
      }
    }
  }
});

test('a large difference needs two replicates at the least; a tiny one more than can be had, with the reason', () => {
  expect(replicatesNeeded({ ...pair, differencePercent: 1000 }, 0.9).replicates).toBe(2);
  expect(replicatesNeeded({ ...pair, differencePercent: 0.5 }, 0.9)).toEqual({
    replicates: null,
    power: null,
    df: null,
    reason: 'more than 1000 replicates of each treatment would be needed',
  });
});

test('the detectable difference is the one that has the power asked for', async () => {
  const code = 'power.t.test(n = 10, sd = 15, power = 0.8, strict = TRUE, tol = 1e-10)$delta';
  expectClose(detectableDifference(pair, 10, 0.8), await numberFromR(code), 1e-7);
  for (const kind of ['t', 'F'] as const) {
    const comparison: Comparison = { ...pair, treatments: 6, design: 'randomised blocks', test: kind };
    const differencePercent = detectableDifference(comparison, 4, 0.9);
    expectClose(powerOfComparison({ ...comparison, differencePercent }, 4), 0.9, 1e-8);
  }
});

test('power is alpha without a difference, and goes on smoothly where differences are plain', () => {
  expectClose(powerOfComparison({ ...pair, differencePercent: 0 }, 6), 0.05, 1e-10);
  // One error degree of freedom and a small alpha: even 1,000 standard errors are not certain to be found.
  const plain: Comparison = { ...pair, cvPercent: 1, design: 'randomised blocks', alpha: 0.001 };
  const [near, far] = [999.9, 1000.1].map((d) => powerOfComparison({ ...plain, differencePercent: d }, 2));
  expect(near).toBeLessThan(0.95);
  expectClose(far, near!, 0.001);
});

test('what lies outside the domain throws with the value refused', () => {
  expect(() => powerOfComparison({ ...pair, cvPercent: 0 }, 3)).toThrow('not 0');
  expect(() => powerOfComparison({ ...pair, treatments: 1 }, 3)).toThrow('not 1');
  expect(() => powerOfComparison({ ...pair, alpha: 5 }, 3)).toThrow('not 5');
  expect(() => powerOfComparison(pair, 1)).toThrow('not 1');
  expect(() => replicatesNeeded({ ...pair, differencePercent: -3 }, 0.8)).toThrow('not -3');
  expect(() => replicatesNeeded(pair, 80)).toThrow('not 80');
  expect(() => detectableDifference(pair, 4, 0.01)).toThrow('not 0.01');
});
