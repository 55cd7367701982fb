import { averageOverChi } from '../average-over-chi.ts';
import { quantileOfTail } from '../distributions/quantile-of-tail.ts';
import { keptLast } from '../kept-last.ts';
import { cholesky } from './cholesky.ts';
import { distinctComparisons, productFactors, type SymmetricMatrix } from './correlation.ts';
import { logLargestByDirections } from './largest-by-directions.ts';
import { logLargestFromProduct } from './largest-from-product.ts';
import { logLargestUpperTail } from './largest-of-normals.ts';

/** The seed of the directions, where they are used; published with the result. */
const defaultSeed = 1955;

/** Pots and plants of one design, and its cuts, mostly share their correlations. */
const kept = 8;
const tailByLattice = keptLast(kept, (distinct: SymmetricMatrix) => logLargestFromProduct(distinct));
const tailByDirections = keptLast(kept, (given: { distinct: SymmetricMatrix; seed: number }) =>
  logLargestByDirections(given.distinct, given.seed),
);

/** More comparisons than this, where their correlations are no products, are left to directions. */
const mostByLattice = 12;

/** So are correlations so near to singular: the part of one comparison's variance that the others leave. */
const nearSingular = 0.01;

export interface DunnettDistribution {
  /** How the chances are computed: by quadrature, or by quadrature corrected over a lattice or over directions. */
  method: 'quadrature' | 'lattice' | 'directions';
  /** The seed of the directions; null where there are none. */
  seed: number | null;
  /**
   * The adjusted two-sided p of a comparison: the chance that the largest |t| of the family exceeds |t|.
   * `df` positive, fractional allowed, or Infinity.
   */
  upperTail(t: number, df: number): number;
  /** The critical value: what the largest |t| of the family exceeds with chance alpha. */
  criticalValue(alpha: number, df: number): number;
}

/**
 * Dunnett's distribution: the largest |t| of comparisons with a control, all with one estimate of error.
 *
 * Where every correlation is a product b_i b_j (independent means, however unequal their standard errors) both
 * are by quadrature, within 1e-10, small p keeping their relative accuracy. Other correlations of up to 12
 * comparisons, as a mixed model or blocks with plants missing give them, are computed on a fixed lattice: p within
 * about 1e-6, in the worst cases 1e-4, critical values within 1e-6 and 1e-5 of themselves. More comparisons, or
 * correlations that are all but singular, are computed over seeded directions: p varies from seed to seed with a
 * standard deviation of about 0.1 % of p for up to 12 comparisons and 0.3 % for 55, and with its seed given is
 * the same at every run.
 * A comparison that is another with its sign changed counts once.
 *
 * References: C. W. Dunnett (1955), Journal of the American Statistical Association 50, 1096-1121; C. W. Dunnett
 * (1964), New tables for multiple comparisons with a control, Biometrics 20, 482-491.
 *
 * @param correlation of the differences with the control: symmetric, ones on its diagonal
 * @example dunnett([[1, 0.5], [0.5, 1]]).criticalValue(0.05, 10) // 2.57
 */
export function dunnett(correlation: SymmetricMatrix, seed = defaultSeed): DunnettDistribution {
  requireCorrelation(correlation);
  const own = distinctComparisons(correlation);
  const distinct = own.map((i) => own.map((j) => correlation[i]![j]!));
  const factors = productFactors(distinct);
  const method = methodFor(distinct, factors);
  const logTail = factors
    ? logLargestUpperTail(factors)
    : method === 'lattice'
      ? tailByLattice(distinct)
      : tailByDirections({ distinct, seed });
  const upperTail = (t: number, df: number) => {
    if (Number.isNaN(t)) throw new RangeError('dunnett requires a number t, not NaN');
    if (!(df > 0)) throw new RangeError(`dunnett requires positive degrees of freedom, not ${df}`);
    const size = Math.abs(t);
    if (size === 0) return 1;
    if (size === Infinity) return 0;
    const start = -0.5 * Math.log1p((size * size) / df);
    const average = averageOverChi((s) => logTail(size * s), {
      df,
      curvature: 8 + own.length,
      start,
      slope: size,
    });
    return Math.min(1, average);
  };
  return {
    method,
    seed: method === 'directions' ? seed : null,
    upperTail,
    criticalValue: (alpha, df) =>
      quantileOfTail(
        alpha,
        (t) => upperTail(t, df),
        (t) => 1 - upperTail(t, df),
        2.5,
      ),
  };
}

function methodFor(
  distinct: SymmetricMatrix,
  factors: readonly number[] | null,
): DunnettDistribution['method'] {
  if (factors) return 'quadrature';
  if (distinct.length > mostByLattice) return 'directions';
  const least = Math.min(...cholesky(distinct).map((row, index) => row[index]! ** 2));
  return least < nearSingular ? 'directions' : 'lattice';
}

function requireCorrelation(correlation: SymmetricMatrix): void {
  const size = correlation.length;
  if (size === 0) throw new RangeError('dunnett requires at least one comparison');
  correlation.forEach((row, i) => {
    if (row.length !== size) throw new RangeError('dunnett requires as many columns of correlations as rows');
    row.forEach((value, j) => {
      const right = i === j ? Math.abs(value - 1) < 1e-9 : Math.abs(value) <= 1 + 1e-9;
      if (!right || Math.abs(value - correlation[j]![i]!) > 1e-9) {
        throw new RangeError(
          `dunnett requires correlations, alike both ways, 1 on the diagonal; not ${value}`,
        );
      }
    });
  });
}
