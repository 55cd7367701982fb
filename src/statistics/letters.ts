/**
 * The compact letter display of pairwise comparisons, by insert-and-absorb: two means share a letter exactly
 * when their p is at least alpha. p is taken as computed, never rounded.
 *
 * It begins with one letter for all. Each pair that differs splits every letter that both carry into two, one
 * without the first mean and one without the second; a letter whose means all carry another is absorbed. What
 * is left are the largest sets of means of which no two differ, whatever the order of the pairs, so p that do
 * not follow the order of the means (unequal replication) are shown truly.
 *
 * @param p symmetric, one row and one column a mean, means in descending order; the diagonal is not read
 * @returns one string a mean. Letters run a to z, then aa, ab, ...; the first mean carries a. Where there are
 *   more than 26, the letters of a mean are separated by spaces
 *
 * Reference: H.-P. Piepho (2004), An algorithm for a letter-based representation of all-pairwise comparisons,
 * Journal of Computational and Graphical Statistics 13, 456-466.
 *
 * @example letters([[1, 0.2, 0.01], [0.2, 1, 0.3], [0.01, 0.3, 1]], 0.05) // ['a', 'ab', 'b']
 */
export function letters(p: readonly (readonly number[])[], alpha: number): string[] {
  if (!(alpha > 0 && alpha < 1))
    throw new RangeError(`letters requires an alpha between 0 and 1, not ${alpha}`);
  requireSymmetric(p);
  let sets: Set<number>[] = p.length === 0 ? [] : [new Set(p.keys())];
  for (let a = 0; a < p.length; a += 1) {
    for (let b = a + 1; b < p.length; b += 1) {
      if (p[a]![b]! < alpha) sets = split(sets, a, b);
    }
  }
  const columns = sets.map((set) => [...set].sort((a, b) => a - b)).sort(inOrderOfMeans);
  const gap = columns.length > 26 ? ' ' : '';
  return Array.from(p, (_, mean) =>
    columns.flatMap((column, index) => (column.includes(mean) ? [letterName(index)] : [])).join(gap),
  );
}

/** Parts a and b in every set that holds both, and absorbs what another set holds. */
function split(sets: Set<number>[], a: number, b: number): Set<number>[] {
  const kept = sets.filter((set) => !(set.has(a) && set.has(b)));
  const parts = sets
    .filter((set) => set.has(a) && set.has(b))
    .flatMap((set) => [without(set, a), without(set, b)]);
  for (const part of parts) {
    if (!kept.some((set) => holds(set, part))) kept.push(part);
  }
  return kept;
}

const holds = (set: Set<number>, part: Set<number>) => [...part].every((mean) => set.has(mean));

function without(set: Set<number>, mean: number): Set<number> {
  const rest = new Set(set);
  rest.delete(mean);
  return rest;
}

function inOrderOfMeans(one: readonly number[], other: readonly number[]): number {
  const differing = one.findIndex((mean, index) => mean !== other[index]);
  return differing === -1 ? one.length - other.length : one[differing]! - (other[differing] ?? -1);
}

/** a to z, then aa, ab, ...: the index counted in letters. */
function letterName(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letterName(Math.floor(index / 26) - 1) + last;
}

function requireSymmetric(p: readonly (readonly number[])[]): void {
  for (let a = 0; a < p.length; a += 1) {
    if (p[a]!.length !== p.length) throw new RangeError('letters requires as many columns of p as rows');
    for (let b = 0; b < a; b += 1) {
      const [value, mirrored] = [p[a]![b]!, p[b]![a]!];
      if (!(value >= 0 && value <= 1) || value !== mirrored) {
        throw new RangeError(`letters requires p from 0 to 1, alike both ways, not ${value} and ${mirrored}`);
      }
    }
  }
}
