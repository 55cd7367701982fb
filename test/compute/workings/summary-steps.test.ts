import { describe, expect, it } from 'vitest';
import { summaryOf } from '../../../src/compute/summary-of.ts';
import { summarySteps } from '../../../src/compute/workings/summary-steps.ts';

const known = (value: number) => ({ value, unknown: false });

describe('summarySteps', () => {
  it('puts the numbers into the formulas of a mean and its interval', () => {
    const steps = summarySteps(summaryOf([known(120), known(140)], null), 'g', 0);
    expect(steps.map(({ name }) => name)).toEqual([
      'Mean',
      'Standard deviation',
      'CV',
      'Standard error',
      '95% interval',
    ]);
    expect(steps[0]?.formula).toBe('sum ÷ n = 260 ÷ 2 = 130 g');
  });

  it('leaves the interval out where all values are alike, which gives no t', () => {
    const steps = summarySteps(summaryOf([known(130), known(130)], null), 'g', 0);
    expect(steps.map(({ name }) => name)).not.toContain('95% interval');
    expect(steps.map(({ formula }) => formula).join()).not.toMatch(/NaN|Infinity/);
  });
});
