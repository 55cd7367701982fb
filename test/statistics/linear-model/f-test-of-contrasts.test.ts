import { describe, expect, test } from 'vitest';
import { combinedDegreesOfFreedom } from '../../../src/statistics/linear-model/f-test-of-contrasts.ts';
import { varianceComponentsByMeanSquares } from '../../../src/statistics/linear-model/variance-components-by-mean-squares.ts';
import { expectClose } from '../../support/close.ts';

describe('degrees of freedom of an F after Fai and Cornelius', () => {
  test('equal ones stay what they are', () => {
    expect(combinedDegreesOfFreedom([7])).toBe(7);
    expect(combinedDegreesOfFreedom([12, 12, 12])).toBe(12);
    expect(combinedDegreesOfFreedom([1.4, 1.4])).toBe(1.4);
  });

  test('unequal ones by hand: 4 and 10 give E = 2 + 1.25, 2 E / (E - 2) = 5.2', () => {
    expectClose(combinedDegreesOfFreedom([4, 10]), 5.2, 1e-14);
  });

  test('where one has no mean, the fewest', () => {
    expect(combinedDegreesOfFreedom([2, 30])).toBe(2);
    expect(combinedDegreesOfFreedom([1.3, 30])).toBe(1.3);
  });

  test('one that is not known leaves all unknown', () => {
    expect(combinedDegreesOfFreedom([5, null])).toBeNull();
    expect(combinedDegreesOfFreedom([])).toBeNull();
  });
});

test('variance components by mean squares, by hand', () => {
  // Containers of 12 plants in pots of 3: (50 - 20) / 12, (20 - 8) / 3, 8.
  const stratum = (name: string, meanSquare: number | null, observationsPerGroup: number) => ({
    stratum: name,
    df: 4,
    meanSquare,
    observationsPerGroup,
  });
  const components = varianceComponentsByMeanSquares([
    stratum('container', 50, 12),
    stratum('pot', 20, 3),
    stratum('plant', 8, 1),
  ]);
  expect(components.map(({ variance }) => variance)).toEqual([2.5, 4, 8]);
  const lacking = varianceComponentsByMeanSquares([
    stratum('container', null, 12),
    stratum('pot', 5, 3),
    stratum('plant', 8, 1),
  ]);
  expect(lacking).toEqual([
    { term: 'container', variance: null, negative: false },
    { term: 'pot', variance: -1, negative: true },
    { term: 'plant', variance: 8, negative: false },
  ]);
});
