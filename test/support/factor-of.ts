import type { Factor } from '../../src/statistics/linear-model/model-terms.ts';

/** A factor from labels, its levels in the order of R's default: sorted as text. */
export function factorOf(name: string, labels: readonly (string | number)[]): Factor & { labels: string[] } {
  const levels = [...new Set(labels.map(String))].sort();
  return {
    name,
    levels: levels.length,
    values: labels.map((label) => levels.indexOf(String(label))),
    labels: levels,
  };
}

/** Group numbers from the combinations of several labels. */
export function groupsOf(...lists: readonly (readonly (string | number)[])[]): number[] {
  const seen = new Map<string, number>();
  return (lists[0] ?? []).map((_, i) => {
    const key = lists.map((list) => String(list[i])).join('|');
    const index = seen.get(key) ?? seen.size;
    seen.set(key, index);
    return index;
  });
}
