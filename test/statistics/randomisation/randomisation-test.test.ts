import { describe, expect, test } from 'vitest';
import { analysisOfVarianceTypeThree } from '../../../src/statistics/linear-model/analysis-of-variance-type-three.ts';
import { modelTerms } from '../../../src/statistics/linear-model/model-terms.ts';
import { distinctOrders, numberOfArrangements } from '../../../src/statistics/randomisation/arrangements.ts';
import { exactIntegers } from '../../../src/statistics/randomisation/exact-integers.ts';
import { integerAdjugate } from '../../../src/statistics/randomisation/integer-adjugate.ts';
import { latinSquareRandomisationTest } from '../../../src/statistics/randomisation/latin-square-randomisation-test.ts';
import {
  type RandomisationTest,
  type RandomisationResult,
  type RandomisedUnit,
  randomisationTest,
} from '../../../src/statistics/randomisation/randomisation-test.ts';
import { seededRandom } from '../../../src/statistics/seeded-random.ts';
import { expectClose, expectWithin } from '../../support/close.ts';

function tested(result: RandomisationResult): RandomisationTest {
  if ('reason' in result) throw new Error(result.reason);
  return result;
}

/** An exact test draws nothing: its result is the same whatever the seed. */
const never = seededRandom(0);

function units(
  values: readonly number[],
  treatments: readonly number[],
  blocks = values.map(() => 0),
): RandomisedUnit[] {
  return values.map((total, i) => ({ total, count: 1, treatment: treatments[i]!, block: blocks[i]! }));
}

/** By sheer force: every order of treatments within blocks, F by least squares, ties within 1e-9. */
function byForce(given: readonly RandomisedUnit[]): { p: number; arrangements: number; f: number } {
  const blocks = [...new Set(given.map(({ block }) => block))];
  const members = blocks.map((block) => given.flatMap((unit, i) => (unit.block === block ? [i] : [])));
  const levels = Math.max(...given.map(({ treatment }) => treatment)) + 1;
  const values = given.map(({ total, count }) => total / count);
  const statistic = (treatments: readonly number[]) => {
    const factors = [
      { name: 'block', levels: blocks.length, values: given.map(({ block }) => blocks.indexOf(block)) },
      { name: 'treatment', levels, values: treatments },
    ];
    const model = modelTerms(given.length, factors, [['block'], ['treatment']]);
    return analysisOfVarianceTypeThree(model, values).rows[1]!;
  };
  const observed = statistic(given.map(({ treatment }) => treatment));
  let [reached, arrangements] = [0, 0];
  const go = (b: number, treatments: number[]): void => {
    if (b === members.length) {
      arrangements += 1;
      if (statistic(treatments).sumOfSquares! >= observed.sumOfSquares! * (1 - 1e-9)) reached += 1;
      return;
    }
    for (const order of distinctOrders(members[b]!.map((i) => given[i]!.treatment))) {
      const next = [...treatments];
      members[b]!.forEach((i, k) => (next[i] = order[k]!));
      go(b + 1, next);
    }
  };
  go(
    0,
    given.map(() => 0),
  );
  return { p: reached / arrangements, arrangements, f: observed.f! };
}

describe('exact tests', () => {
  test('six units, two treatments wholly apart: 2 of 20 arrangements', () => {
    const found = tested(randomisationTest(units([1, 2, 3, 4, 5, 6], [0, 0, 0, 1, 1, 1]), never));
    expect(found).toMatchObject({ p: 2 / 20, arrangements: 20, exact: true, draws: 0, leastP: 2 / 20 });
    expectClose(found.sumOfSquares, 13.5, 1e-12);
    expectClose(found.f, 13.5, 1e-12);
  });

  const cases = {
    'completely randomised, unequal numbers': units([5, 7, 6, 9, 9, 4, 8], [0, 0, 1, 1, 1, 2, 2]),
    'three blocks of three': units(
      [5, 7, 6, 9, 8, 4, 8, 6, 3],
      [0, 1, 2, 0, 1, 2, 0, 1, 2],
      [0, 0, 0, 1, 1, 1, 2, 2, 2],
    ),
    'a block short of a plot': units(
      [5, 7, 6, 9, 8, 8, 6, 3],
      [0, 1, 2, 0, 1, 0, 1, 2],
      [0, 0, 0, 1, 1, 2, 2, 2],
    ),
    'pairs in incomplete blocks': units(
      [5, 7, 6, 9, 8, 3, 5, 6],
      [0, 1, 1, 2, 0, 2, 1, 0],
      [0, 0, 1, 1, 2, 2, 3, 3],
    ),
  };
  test.each(Object.entries(cases))('%s: as by sheer force', (_, given) => {
    const found = tested(randomisationTest(given, never));
    const expected = byForce(given);
    expect(found.arrangements).toBe(expected.arrangements);
    expectClose(found.p, expected.p, 1e-14);
    expectClose(found.f, expected.f, 1e-9);
    // Treatments so far apart that no other grouping of the units does as much have the least p there is.
    const apart = given.map((unit) => ({ ...unit, total: unit.total + [0, 500, 12_000][unit.treatment]! }));
    expectClose(found.leastP, byForce(apart).p, 1e-14);
  });

  test('plants in a pot: the means of the pots are compared', () => {
    const pots: RandomisedUnit[] = [
      { total: 10, count: 3, treatment: 0, block: 0 },
      { total: 12.5, count: 4, treatment: 0, block: 0 },
      { total: 9, count: 2, treatment: 1, block: 0 },
      { total: 16, count: 3, treatment: 1, block: 0 },
      { total: 7.2, count: 3, treatment: 0, block: 0 },
      { total: 4.5, count: 1, treatment: 1, block: 0 },
    ];
    const found = tested(randomisationTest(pots, never));
    expectClose(found.p, byForce(pots).p, 1e-14);
    expectClose(found.f, byForce(pots).f, 1e-9);
  });
});

describe('ties', () => {
  test('sums that are equal in decimals tie, though not in binary (0.1 + 0.2 and 0.3)', () => {
    // Treatment totals 0.3 and 0.6: so have {0.1, 0.2}, {0.3, 0}: 0.1 + 0.2 > 0.3 + 0 in binary.
    const values = [0.3, 0, 0.1, 0.2, 0.25, 0.05];
    const labels = [0, 0, 1, 1, 2, 2];
    const decimal = tested(randomisationTest(units(values, labels), never));
    const whole = tested(
      randomisationTest(
        units(
          values.map((value) => Math.round(value * 100)),
          labels,
        ),
        never,
      ),
    );
    expect(decimal.p).toBe(whole.p);
    expect(decimal.p).toBe(1);
  });

  test('p is the same in grams as in tenths of a gram, ounces and pots of three', () => {
    const random = seededRandom(3);
    for (let k = 0; k < 30; k++) {
      const grams = Array.from({ length: 8 }, () => random.integer(6));
      const labels = [0, 0, 0, 1, 1, 2, 2, 2];
      const p = (totals: number[], count = 1) => {
        const found = randomisationTest(
          totals.map((total, i) => ({ total, count, treatment: labels[i]!, block: 0 })),
          never,
        );
        return 'reason' in found ? found.reason : found.p;
      };
      const expected = p(grams);
      expect(p(grams.map((value) => value / 10))).toBe(expected);
      expect(p(grams.map((value) => value * 28.349523125))).toBe(expected);
      expect(
        p(
          grams.map((value) => value / 10),
          3,
        ),
      ).toBe(expected);
    }
  });
});

describe('drawn tests', () => {
  const blocks = Array.from({ length: 16 }, (_, i) => Math.floor(i / 4));
  const labels = Array.from({ length: 16 }, (_, i) => i % 4);
  const values = [118, 131, 109, 120, 114, 125, 113, 117, 128, 121, 119, 116, 112, 124, 110, 119];

  test('four blocks of four: 331,776 arrangements, 20,000 drawn, near the p of all of them', () => {
    const given = units(values, labels, blocks);
    const found = tested(randomisationTest(given, seededRandom(8812)));
    expect(found).toMatchObject({ arrangements: 331_776, exact: false, draws: 20_000 });
    expect(tested(randomisationTest(given, seededRandom(8812))).p).toBe(found.p);
    // All arrangements by another way: the first block may stay as it is, treatments having no order.
    const orders = distinctOrders([0, 1, 2, 3]);
    const squares = (totals: readonly number[]) => totals.reduce((sum, total) => sum + total * total, 0);
    const totalsOf = (arrangement: readonly (readonly number[])[]) => {
      const totals = [0, 0, 0, 0];
      arrangement.forEach((order, b) => {
        order.forEach((treatment, k) => (totals[treatment]! += values[4 * b + k]!));
      });
      return totals;
    };
    const target = squares(totalsOf([orders[0]!, orders[0]!, orders[0]!, orders[0]!]));
    let reached = 0;
    for (const a of orders)
      for (const b of orders)
        for (const c of orders) if (squares(totalsOf([orders[0]!, a, b, c])) >= target) reached += 1;
    const p = reached / 24 ** 3;
    expectWithin(found.p, p, 4 * Math.sqrt((p * (1 - p)) / 20_000));
  });

  test('p is never 0: the arrangement used is one of them', () => {
    const apart = Array.from({ length: 24 }, (_, i) => 10 * Math.floor(i / 8) + (i % 8) / 100);
    const found = tested(
      randomisationTest(
        units(
          apart,
          apart.map((value) => Math.floor(value / 10)),
        ),
        seededRandom(1),
      ),
    );
    expect(found).toMatchObject({ p: 1 / 20_001, exact: false });
  });
});

describe('the Latin square', () => {
  const square = [
    [0, 1, 2, 3],
    [1, 2, 3, 0],
    [2, 3, 0, 1],
    [3, 0, 1, 2],
  ];
  const weights = [
    [21, 26, 20, 25],
    [23, 26, 20, 27],
    [15, 26, 17, 22],
    [17, 22, 16, 20],
  ];
  const plots = square.flatMap((row, i) =>
    row.map((treatment, j) => ({ total: weights[i]![j]! / 10, count: 1, row: i, column: j, treatment })),
  );

  test('four by four: 576 arrangements, as by sheer force', () => {
    const found = tested(latinSquareRandomisationTest(plots, never));
    expect(found).toMatchObject({ arrangements: 576, exact: true });
    const orders = distinctOrders([0, 1, 2, 3]);
    const squares = (rows: readonly number[], columns: readonly number[]) => {
      const totals = [0, 0, 0, 0];
      weights.forEach((row, i) => {
        row.forEach((value, j) => (totals[square[rows[i]!]![columns[j]!]!]! += value));
      });
      return totals.reduce((sum, total) => sum + total * total, 0);
    };
    const target = squares([0, 1, 2, 3], [0, 1, 2, 3]);
    let reached = 0;
    for (const rows of orders)
      for (const columns of orders) if (squares(rows, columns) >= target) reached += 1;
    expect(found.p).toBe(reached / 576);
    const model = modelTerms(
      16,
      ['row', 'column', 'treatment'].map((name) => ({
        name,
        levels: 4,
        values: plots.map((plot) => plot[name as 'row']),
      })),
      [['row'], ['column'], ['treatment']],
    );
    const line = analysisOfVarianceTypeThree(
      model,
      plots.map(({ total }) => total),
    ).rows[2]!;
    expectClose(found.f, line.f!, 1e-9);
    expectClose(found.sumOfSquares, line.sumOfSquares!, 1e-9);
  });

  /** The groups that treatments make of the plots, whatever the treatments are called. */
  const groups = (treatments: readonly number[]) => treatments.map((each) => treatments.indexOf(each)).join();
  const table = { cyclic: square, 'of two by two': [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => i ^ j)) };

  // The number of ways in which a group's table is itself again is the group's size squared times the number of its
  // automorphisms: 16 x 2 for the cyclic one, 16 x 6 for the other.
  test.each([
    ['cyclic', 32],
    ['of two by two', 96],
  ] as const)('four by four, %s: p is never less than %d of 576', (name, ways) => {
    const used = table[name];
    const own = plots.map((plot) => ({ ...plot, treatment: used[plot.row]![plot.column]! }));
    const found = tested(latinSquareRandomisationTest(own, never));
    const orders = distinctOrders([0, 1, 2, 3]);
    const seen = orders.flatMap((rows) =>
      orders.map((columns) => groups(own.map(({ row, column }) => used[rows[row]!]![columns[column]!]!))),
    );
    const mine = groups(own.map(({ treatment }) => treatment));
    expect(seen.filter((each) => each === mine)).toHaveLength(ways);
    expect(found.leastP).toBe(ways / 576);
    expect(found.p).toBeGreaterThanOrEqual(found.leastP);
    // Treatments as far apart as they can be reach it.
    const apart = own.map((plot) => ({ ...plot, total: [1, 2, 40, 900][plot.treatment]! }));
    expect(tested(latinSquareRandomisationTest(apart, never)).p).toBe(ways / 576);
  });

  test('six by six is drawn', () => {
    const six = Array.from({ length: 36 }, (_, k) => ({
      total: (k * 17) % 23,
      count: 1,
      row: Math.floor(k / 6),
      column: k % 6,
      treatment: (Math.floor(k / 6) + k) % 6,
    }));
    expect(tested(latinSquareRandomisationTest(six, seededRandom(4)))).toMatchObject({
      exact: false,
      draws: 20_000,
      arrangements: 518_400,
    });
  });

  test('a square with a plot missing or a treatment twice in a row is refused', () => {
    const reason = { reason: 'the Latin square is not complete' };
    expect(latinSquareRandomisationTest(plots.slice(1), never)).toEqual(reason);
    expect(
      latinSquareRandomisationTest(
        plots.map((plot, k) => (k === 0 ? { ...plot, treatment: 1 } : plot)),
        never,
      ),
    ).toEqual(reason);
  });
});

describe('what cannot be tested', () => {
  test('units that do not differ, one treatment, treatments that share no block', () => {
    expect(randomisationTest(units([0.1, 0.1, 0.1, 0.1], [0, 0, 1, 1]), never)).toEqual({
      reason: 'units of a block do not differ',
    });
    expect(randomisationTest(units([1, 2, 3], [0, 0, 0]), never)).toEqual({
      reason: 'there is one treatment only',
    });
    expect(randomisationTest(units([1, 2, 3, 4], [0, 0, 1, 1], [0, 0, 1, 1]), never)).toEqual({
      reason: 'not all treatments can be compared within blocks',
    });
  });

  test('one value in each group: every arrangement is the same, p is 1 and F null', () => {
    expect(randomisationTest(units([1, 2, 4], [0, 1, 2]), never)).toMatchObject({
      p: 1,
      f: null,
      arrangements: 6,
    });
  });
});

describe('the parts', () => {
  test('arrangements are counted and listed alike', () => {
    for (const list of [[0], [0, 1], [1, 1, 0, 0], [0, 0, 0, 1, 2], [2, 1, 0, 1, 2, 0]]) {
      const orders = distinctOrders(list);
      expect(orders.length).toBe(numberOfArrangements([list]));
      expect(new Set(orders.map((order) => order.join())).size).toBe(orders.length);
    }
    expect(
      numberOfArrangements([
        [0, 0, 1, 1],
        [0, 1],
      ]),
    ).toBe(12);
  });

  test('whole numbers keep differences exactly', () => {
    expect(exactIntegers([0.1, 0.5], [1, 3], 1)).toEqual({ integers: [0, 1], scale: 15 });
    // Ounces, converted: 4.2, 1.7 and 3.3 oz are 25, 0 and 16 tenths above 1.7.
    const ounces = exactIntegers(
      [4.2, 1.7, 3.3].map((weight) => weight * 28.349523125),
      [1, 1, 1],
      1e6,
    );
    expect(ounces.integers.map((value) => value - ounces.integers[1]!)).toEqual([25, 0, 16]);
    expectClose(25 / ounces.scale, 2.5 * 28.349523125, 1e-12);
    // What lies beyond the digits kept is rounded away.
    expect(exactIntegers([1e300, 1e-300], [1, 1], 1).integers.map(Math.sign)).toEqual([0, -1]);
    expect(exactIntegers([-12.34, 12.34], [1, 1], 1)).toEqual({ integers: [0, 1], scale: 100 / 2468 });
  });

  test('an adjugate is the inverse times the determinant', () => {
    expect(
      integerAdjugate([
        [2n, 1n],
        [1n, 3n],
      ]),
    ).toEqual([
      [3n, -1n],
      [-1n, 2n],
    ]);
    expect(
      integerAdjugate([
        [1n, 1n],
        [1n, 1n],
      ]),
    ).toBeNull();
    const matrix = [
      [7n, -2n, 1n],
      [-2n, 9n, -3n],
      [1n, -3n, 8n],
    ];
    const adjugate = integerAdjugate(matrix)!;
    const product = matrix.map((row) =>
      adjugate[0]!.map((_, j) => row.reduce((sum, value, k) => sum + value * adjugate[k]![j]!, 0n)),
    );
    expect(product).toEqual([
      [412n, 0n, 0n],
      [0n, 412n, 0n],
      [0n, 0n, 412n],
    ]);
  });
});
