/** Shades on either side of none. */
export const shadesASide = 3;

/** A diverging scale in steps, even about zero. */
export interface ResidualSteps {
  /** Round boundaries, ascending and even about zero: -3w, -2w, -w, w, 2w, 3w or fewer. */
  boundaries: readonly number[];
  /** The class of the style sheet for a residual: `below-1` to `below-3`, `even`, `above-1` to `above-3`. */
  shadeOf(residual: number): string;
  shades: readonly string[];
}

/** Steps of one round width for the given residuals; the middle one lies within half a step of zero. */
export function residualSteps(residuals: readonly number[]): ResidualSteps {
  const largest = Math.max(0, ...residuals.map(Math.abs));
  const width = largest === 0 ? 1 : roundBelow(largest / (shadesASide - 0.5));
  const limits = Array.from({ length: shadesASide }, (_, index) => (index + 0.5) * width);
  const shadeOf = (residual: number) => {
    const size = limits.filter((limit) => Math.abs(residual) >= limit).length;
    return size === 0 ? 'even' : `${residual < 0 ? 'below' : 'above'}-${String(size)}`;
  };
  return {
    boundaries: [...limits.map((limit) => -limit).reverse(), ...limits],
    shadeOf,
    shades: ['below-3', 'below-2', 'below-1', 'even', 'above-1', 'above-2', 'above-3'],
  };
}

/** The largest of 1, 2 and 5 times a power of ten that is not above a positive number. */
function roundBelow(number: number): number {
  const power = 10 ** Math.floor(Math.log10(number));
  return ([5, 2].find((digit) => digit * power <= number) ?? 1) * power;
}
