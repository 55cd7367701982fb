/** A place from 0 to 1 and its weight in a sum that stands for an integral. */
export interface Node {
  at: number;
  weight: number;
}

/**
 * Nodes and weights of Gauss-Legendre quadrature from 0 to 1: the sum of weight times f(at) is the integral of f,
 * exactly for polynomials of a degree below twice the order. Nodes are roots of the Legendre polynomial, found
 * by Newton's method from the usual first guess.
 *
 * Reference: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, 25.4.29.
 *
 * @param order how many nodes, 1 or more
 */
export function gaussLegendre(order: number): Node[] {
  return Array.from({ length: order }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (order + 0.5));
    let slope = 1;
    for (let round = 0; round < 12; round += 1) {
      let [before, value] = [1, x];
      for (let degree = 2; degree <= order; degree += 1) {
        [before, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * before) / degree];
      }
      slope = (order * (x * value - before)) / (x * x - 1);
      x -= value / slope;
    }
    return { at: (1 - x) / 2, weight: 1 / ((1 - x * x) * slope * slope) };
  });
}
