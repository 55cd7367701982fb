/**
 * Nodes and weights of Gauss-Legendre quadrature on [-1, 1], by Newton's method on the Legendre polynomial. Apart from
 * the program's own, so that a fault in that cannot hide in what it is checked against.
 */
function rule(order: number): { node: number; weight: number }[] {
  return Array.from({ length: order }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (order + 0.5));
    let slope = 1;
    for (let round = 0; round < 100; round += 1) {
      let [before, value] = [1, x];
      for (let degree = 2; degree <= order; degree += 1) {
        [before, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * before) / degree];
      }
      slope = (order * (x * value - before)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-16) break;
    }
    return { node: x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
}

const twenty = rule(20);

/** The integral of a smooth function from one end to the other, by Gauss-Legendre with 20 points a panel. */
export function integrate(of: (x: number) => number, from: number, to: number, panels: number): number {
  const half = (to - from) / panels / 2;
  let total = 0;
  for (let panel = 0; panel < panels; panel += 1) {
    const middle = from + half * (2 * panel + 1);
    for (const { node, weight } of twenty) total += weight * of(middle + half * node);
  }
  return total * half;
}
