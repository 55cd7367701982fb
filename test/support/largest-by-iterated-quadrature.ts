import { normalDensity, normalUpperTail } from '../../src/statistics/distributions/normal.ts';
import { integrate } from './gauss-legendre.ts';

/** Of twenty points each, by the number of normals. */
const panels: Record<number, number> = { 3: 6, 4: 3 };

/**
 * The chance that some |Y_i| exceeds c, for three to five standard normals of correlations r, none of them
 * singular: by Gauss-Legendre quadrature over each in turn given those before, the last in closed form.
 */
export function largestByIteratedQuadrature(r: readonly (readonly number[])[], c: number): number {
  const triangle = r.map(() => new Array<number>(r.length).fill(0));
  for (let i = 0; i < r.length; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let value = r[i]![j]!;
      for (let k = 0; k < j; k += 1) value -= triangle[i]![k]! * triangle[j]![k]!;
      triangle[i]![j] = i === j ? Math.sqrt(value) : value / triangle[j]![j]!;
    }
  }
  const within = (given: number[]): number => {
    const row = triangle[given.length]!;
    const mean = given.reduce((total, z, index) => total + row[index]! * z, 0);
    const own = row[given.length]!;
    const [low, high] = [(-c - mean) / own, (c - mean) / own];
    if (given.length === r.length - 1) return normalUpperTail(low) - normalUpperTail(high);
    return integrate(
      (z) => normalDensity(z) * within([...given, z]),
      Math.max(low, -9),
      Math.min(high, 9),
      panels[r.length] ?? 1,
    );
  };
  return 1 - within([]);
}
