import { expect, test } from 'vitest';
import { meanOf } from '../../src/statistics/mean.ts';
import { oneWaySumsOfSquares } from '../../src/statistics/one-way-sums-of-squares.ts';
import { standardDeviationOf } from '../../src/statistics/standard-deviation.ts';
import { digitsOfAgreement } from '../support/close.ts';

/*
 * NIST Statistical Reference Datasets, univariate summary statistics (NumAcc1 to 4) and analysis of variance
 * (SmLs01 to 09, after Simon and Lesage 1989). The data follow from their published definitions; the certified
 * values are from memory, so each is worked out again below in whole numbers, without any rounding.
 */

/** A set given in tenths: `centre`, then `pairs` of one tenth below and one above it. */
const inTenths = (centre: bigint, pairs: number): bigint[] => [
  centre,
  ...Array.from({ length: pairs }, () => [centre - 1n, centre + 1n]).flat(),
];

const univariate = [
  { name: 'NumAcc1', tenths: [100000010n, 100000030n, 100000020n], mean: 10000002, sd: 1, digits: 13 },
  { name: 'NumAcc2', tenths: inTenths(12n, 500), mean: 1.2, sd: 0.1, digits: 13 },
  { name: 'NumAcc3', tenths: inTenths(10000002n, 500), mean: 1000000.2, sd: 0.1, digits: 13 },
  { name: 'NumAcc4', tenths: inTenths(100000002n, 500), mean: 10000000.2, sd: 0.1, digits: 13 },
];

const total = (values: readonly bigint[]) => values.reduce((sum, value) => sum + value, 0n);

test.each(univariate)(
  '$name: the certified mean and sd follow from the data exactly',
  ({ tenths, mean, sd }) => {
    const n = BigInt(tenths.length);
    expect(total(tenths)).toBe(n * BigInt(Math.round(mean * 10)));
    const centre = total(tenths) / n;
    const squares = total(tenths.map((value) => (value - centre) ** 2n));
    // In hundredths of the squared unit: the variance is sd squared, times 100.
    expect(squares).toBe((n - 1n) * BigInt(Math.round(sd * sd * 100)));
  },
);

test.each(univariate)('$name: mean and sd agree to 13 digits and more', ({ tenths, mean, sd, digits }) => {
  const values = tenths.map((value) => Number(value) / 10);
  expect(digitsOfAgreement(meanOf(values), mean)).toBeGreaterThanOrEqual(digits);
  expect(digitsOfAgreement(standardDeviationOf(values), sd)).toBeGreaterThanOrEqual(digits);
});

test('NumAcc4 keeps 8 digits even where the values cannot be taken for decimals', () => {
  const values = univariate[3]!.tenths.map((value) => Number(value) / 10);
  const offDecimal = [...values.slice(1), 10000000.2 + 2 ** -29];
  expect(digitsOfAgreement(standardDeviationOf(offDecimal), 0.1)).toBeGreaterThanOrEqual(8);
});

/** Nine groups whose centres are offset + 0.4, 0.3, 0.5, 0.3, 0.5, ...: each its centre, then pairs about it. */
function simonLesage(offset: bigint, n: number): bigint[][] {
  const centres = [4n, 3n, 5n, 3n, 5n, 3n, 5n, 3n, 5n];
  return centres.map((centre) => inTenths(offset * 10n + centre, (n - 1) / 2));
}

const oneWay = [1n, 1_000_000n, 1_000_000_000_000n].flatMap((offset, row) =>
  [21, 201, 2001].map((n, column) => ({
    name: `SmLs0${row * 3 + column + 1}`,
    groups: simonLesage(offset, n),
    n,
    // Certified: F is n; between mean square n / 100 on 8, within mean square 0.01 on 9 (n - 1).
    f: n,
    digits: [12, 9, 3][row]!,
  })),
);

test.each(oneWay)('$name: the certified F follows from the data exactly', ({ groups, n, f }) => {
  const size = BigInt(n);
  const grand = total(groups.flat()) / (9n * size);
  expect(total(groups.flat())).toBe(grand * 9n * size);
  const means = groups.map((group) => total(group) / size);
  const between = total(means.map((mean) => size * (mean - grand) ** 2n));
  const within = total(groups.flatMap((group, index) => group.map((value) => (value - means[index]!) ** 2n)));
  // F = (between / 8) / (within / (9 (n - 1))), cross-multiplied.
  expect(between * 9n * (size - 1n)).toBe(BigInt(f) * within * 8n);
});

test.each(oneWay)('$name: F agrees to $digits digits and more', ({ groups, f, digits }) => {
  const values = groups.map((group) => group.map((value) => Number(value) / 10));
  expect(digitsOfAgreement(oneWaySumsOfSquares(values).f!, f)).toBeGreaterThanOrEqual(digits);
});

test('F keeps 9 digits at an offset of a million, and 3 at a million million, where values are no decimals', () => {
  for (const [offset, digits] of [
    [1e6, 8],
    [1e12, 2],
  ] as const) {
    const values = simonLesage(BigInt(offset), 201).map((group) => group.map((value) => Number(value) / 10));
    // One value a hair from its decimal sends the whole analysis the other way.
    values[0]![0] = values[0]![0]! + (offset === 1e6 ? 2 ** -32 : 2 ** -13);
    expect(digitsOfAgreement(oneWaySumsOfSquares(values).f!, 201)).toBeGreaterThanOrEqual(digits);
  }
});
