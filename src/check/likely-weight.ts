/** A weight of a sum that another number in its place would set right. */
export interface LikelyWeight {
  /** Index of the weight. */
  index: number;
  /** What it probably was. */
  perhaps: number;
}

/** Powers of ten by which a decimal mark slips. */
const slips = [10, 100, 1000, 0.1, 0.01, 0.001];

/**
 * The one weight that, typed with a slip of the decimal mark or with two neighbouring digits exchanged, explains
 * why the weights do not sum to their total; null where none does, or where more than one would, or a slip in
 * the total itself.
 *
 * @param weights in the unit of the total
 * @param most the most by which rounding sets the total apart from the sum
 */
export function likelyWeight(weights: readonly number[], total: number, most: number): LikelyWeight | null {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  // The total may have been typed with a slip as well.
  if (slipsOf(total).some((one) => Math.abs(one - sum) <= most)) return null;
  const found = weights.flatMap((weight, index) =>
    slipsOf(weight)
      .filter((perhaps) => Math.abs(total - (sum - weight + perhaps)) <= most)
      .map((perhaps) => ({ index, perhaps })),
  );
  return found.length === 1 ? found[0]! : null;
}

/** What a number may have been before a slip of the hand. */
function slipsOf(weight: number): number[] {
  const moved = slips.map((by) => Number((weight * by).toPrecision(12)));
  return [...new Set([...moved, ...exchanged(weight)])].filter((one) => one !== weight);
}

/** A number with each two neighbouring digits exchanged. */
function exchanged(weight: number): number[] {
  const text = String(weight);
  return [...text].slice(1).map((digit, before) => {
    const other = Number(text.slice(0, before) + digit + text.charAt(before) + text.slice(before + 2));
    return Number.isFinite(other) ? other : weight;
  });
}
