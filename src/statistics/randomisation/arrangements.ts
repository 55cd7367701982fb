/**
 * The number of ways to allot the treatments of each block to its units: for each block the factorial of
 * its size over the factorials of the numbers of units alike in treatment, multiplied over blocks.
 * (Infinity once beyond double precision.)
 *
 * @example numberOfArrangements([[0, 0, 1, 1], [0, 1]]) // 12, 6 times 2
 */
export function numberOfArrangements(blocks: readonly (readonly number[])[]): number {
  return blocks.reduce((product, treatments) => product * arrangementsOfBlock(treatments), 1);
}

function arrangementsOfBlock(treatments: readonly number[]): number {
  const counts = new Map<number, number>();
  let ways = 1;
  treatments.forEach((treatment, i) => {
    const count = (counts.get(treatment) ?? 0) + 1;
    counts.set(treatment, count);
    // Multiplying before dividing keeps each step a whole number.
    ways = (ways * (i + 1)) / count;
  });
  return Math.round(ways);
}

/** Every distinct order of a list, in lexical order. */
export function distinctOrders(items: readonly number[]): number[][] {
  const order = [...items].sort((a, b) => a - b);
  const orders = [[...order]];
  for (;;) {
    let i = order.length - 2;
    while (i >= 0 && order[i]! >= order[i + 1]!) i--;
    if (i < 0) return orders;
    let j = order.length - 1;
    while (order[j]! <= order[i]!) j--;
    [order[i], order[j]] = [order[j]!, order[i]!];
    for (let a = i + 1, b = order.length - 1; a < b; a++, b--) [order[a], order[b]] = [order[b]!, order[a]!];
    orders.push([...order]);
  }
}
