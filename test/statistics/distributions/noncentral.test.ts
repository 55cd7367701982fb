import { expect, test } from 'vitest';
import { noncentralFUpperTail } from '../../../src/statistics/distributions/noncentral-f.ts';
import {
  noncentralTLowerTail,
  noncentralTUpperTail,
} from '../../../src/statistics/distributions/noncentral-t.ts';
import { fUpperTail } from '../../../src/statistics/distributions/fisher-f.ts';
import { tUpperTail } from '../../../src/statistics/distributions/student-t.ts';
import { expectClose, expectWithin } from '../../support/close.ts';
import { numbersFromR } from '../../support/r.ts';

const cross = <A, B>(first: readonly A[], second: readonly B[]) =>
  first.flatMap((a) => second.map((b) => [a, b] as const));

test('noncentral t agrees with R to 1e-8 wherever R computes it', async () => {
  const rows = cross([-2, 0, 0.3, 2.2, 5, 12], cross([1, 2.5, 9, 60.5, 300], [-3, 0, 0.5, 3, 12, 35])).map(
    ([t, [df, noncentrality]]) => ({ t, df, noncentrality }),
  );
  const expected = await numbersFromR('suppressWarnings(pt(t, df, noncentrality, lower.tail = FALSE))', {
    t: rows.map(({ t }) => t),
    df: rows.map(({ df }) => df),
    noncentrality: rows.map(({ noncentrality }) => noncentrality),
  });
  rows.forEach(({ t, df, noncentrality }, index) => {
    const what = `t ${t} df ${df} noncentrality ${noncentrality}`;
    const computed = noncentralTUpperTail(t, df, noncentrality);
    expectWithin(computed, expected[index]!, 1e-9, what);
    expectWithin(noncentralTLowerTail(t, df, noncentrality), 1 - computed, 1e-11, what);
  });
});

test('noncentral F agrees with R to 1e-8, its own stated limit being 1e-9', async () => {
  const rows = cross([0.1, 1.5, 5, 60], cross(cross([1, 3.5, 55], [1.5, 12, 168]), [0.1, 4, 50, 300])).map(
    ([f, [[a, b], noncentrality]]) => ({ f, a, b, noncentrality }),
  );
  const expected = await numbersFromR('suppressWarnings(pf(f, a, b, noncentrality, lower.tail = FALSE))', {
    f: rows.map(({ f }) => f),
    a: rows.map(({ a }) => a),
    b: rows.map(({ b }) => b),
    noncentrality: rows.map(({ noncentrality }) => noncentrality),
  });
  rows.forEach(({ f, a, b, noncentrality }, index) => {
    expectWithin(
      noncentralFUpperTail(f, a, b, noncentrality),
      expected[index]!,
      1e-8,
      `${f} ${a} ${b} ${noncentrality}`,
    );
  });
});

test('squared, noncentral t is noncentral F on 1: two ways of computing, to 1e-10 relative', () => {
  for (const [t, [df, noncentrality]] of cross([0.5, 2, 5, 12], cross([1.5, 9, 60.5], [0.5, 3, 15]))) {
    const both = noncentralTUpperTail(t, df, noncentrality) + noncentralTUpperTail(t, df, -noncentrality);
    expectClose(
      noncentralFUpperTail(t * t, 1, df, noncentrality ** 2),
      both,
      1e-10,
      `${t} ${df} ${noncentrality}`,
    );
  }
});

test('without noncentrality they are t and F, in the far tail too', () => {
  expectClose(noncentralTUpperTail(2.306, 8, 0), tUpperTail(2.306, 8), 1e-12);
  expectClose(noncentralTUpperTail(60, 40, 0), tUpperTail(60, 40), 1e-9);
  expectClose(noncentralTUpperTail(1.2, Infinity, 0), tUpperTail(1.2, Infinity), 1e-14);
  expect(noncentralFUpperTail(3.35, 2, 27, 0)).toBe(fUpperTail(3.35, 2, 27));
  expectClose(noncentralFUpperTail(3.35, 2, 27, 1e-9), fUpperTail(3.35, 2, 27), 1e-8);
});

test('the ends are exact, and what lies outside throws with the value refused', () => {
  expect(noncentralTUpperTail(Infinity, 3, 1)).toBe(0);
  expect(noncentralTUpperTail(-Infinity, 3, 1)).toBe(1);
  expect(noncentralFUpperTail(0, 2, 3, 1)).toBe(1);
  expect(noncentralFUpperTail(Infinity, 2, 3, 1)).toBe(0);
  expect(() => noncentralTUpperTail(1, 0, 1)).toThrow('not 0');
  expect(() => noncentralTUpperTail(NaN, 2, 1)).toThrow('not NaN');
  expect(() => noncentralTUpperTail(1, 2, Infinity)).toThrow('not Infinity');
  expect(() => noncentralFUpperTail(1, 2, 3, -1)).toThrow('not -1');
  expect(() => noncentralFUpperTail(1, 0, 3, 1)).toThrow('not 0 and 3');
});
