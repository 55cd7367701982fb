/** Points of interpolation in each piece. */
const points = 16;

const angles = Array.from({ length: points }, (_, index) => ((index + 0.5) * Math.PI) / points);

/** Chebyshev coefficients of a function on [low, low + width], the first halved ready for Clenshaw's sum. */
function chebyshev(of: (x: number) => number, low: number, width: number): Float64Array {
  const values = angles.map((angle) => of(low + (width / 2) * (1 + Math.cos(angle))));
  return Float64Array.from({ length: points }, (_, order) => {
    const total = values.reduce((sum, value, index) => sum + value * Math.cos(order * angles[index]!), 0);
    return (total * (order === 0 ? 1 : 2)) / points;
  });
}

/**
 * Tabulates a smooth function on [0, end] for quick use: on each piece, when first asked for, a Chebyshev
 * interpolant of degree 15; beyond the end the function given for there. Meant for the logarithm of a tail
 * probability, which is smooth even where the tail itself falls by orders of magnitude.
 *
 * @param of the function, called 16 times for each piece
 * @param end a whole number, the last argument tabulated
 * @param beyond the function past the end, such as an asymptotic form
 * @param width of a piece: wider for a function that is smoother still
 */
export function tailTable(
  of: (x: number) => number,
  end: number,
  beyond: (x: number) => number,
  width = 0.5,
): (x: number) => number {
  const pieces: (Float64Array | undefined)[] = [];
  return (x) => {
    if (!(x < end)) return beyond(x);
    const piece = Math.floor(x / width);
    const coefficients = (pieces[piece] ??= chebyshev(of, piece * width, width));
    const y = (2 * (x - piece * width)) / width - 1;
    let next = 0;
    let afterNext = 0;
    for (let order = points - 1; order > 0; order -= 1) {
      const value = 2 * y * next - afterNext + coefficients[order]!;
      afterNext = next;
      next = value;
    }
    return y * next - afterNext + coefficients[0]!;
  };
}
