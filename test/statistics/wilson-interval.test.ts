import { expect, test } from 'vitest';
import { wilsonInterval } from '../../src/statistics/wilson-interval.ts';
import { expectClose } from '../support/close.ts';
import { numbersFromR } from '../support/r.ts';

test('limits agree with R, at both ends too', async () => {
  for (const [successes, trials] of [
    [0, 10],
    [7, 24],
    [10, 10],
    [1, 1],
    [12, 24],
  ] as const) {
    const [lower, upper] = await numbersFromR(
      `as.numeric(prop.test(${successes}, ${trials}, correct = FALSE)$conf.int)`,
    );
    const interval = wilsonInterval(successes, trials);
    expectClose(interval.lower, lower!, 1e-12);
    expectClose(interval.upper, upper!, 1e-12);
  }
});

test('no trials give no proportion; counts that are none throw', () => {
  expect(wilsonInterval(0, 0)).toMatchObject({ proportion: null, reason: expect.any(String) as string });
  expect(() => wilsonInterval(3, 2)).toThrow('not 3, 2');
  expect(() => wilsonInterval(0.5, 2)).toThrow('not 0.5, 2');
  expect(() => wilsonInterval(1, 2, 95)).toThrow('not 95');
});
