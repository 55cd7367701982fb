/**
 * Ranks from 1, ties sharing the mean of the ranks they span, and the sizes of the ties of two or more.
 *
 * @example ranks([10, 20, 20, 5]) // { ranks: [2, 3.5, 3.5, 1], ties: [2] }
 */
export function ranks(values: readonly number[]): { ranks: number[]; ties: number[] } {
  const order = values.map((_, index) => index).sort((a, b) => values[a]! - values[b]!);
  const result = new Array<number>(values.length);
  const ties: number[] = [];
  let from = 0;
  while (from < order.length) {
    let to = from + 1;
    while (to < order.length && values[order[to]!] === values[order[from]!]) to += 1;
    for (let index = from; index < to; index += 1) result[order[index]!] = (from + 1 + to) / 2;
    if (to - from > 1) ties.push(to - from);
    from = to;
  }
  return { ranks: result, ties };
}
