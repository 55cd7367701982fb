/** Numbers keys as they first occur: for each key the index of its group, from 0. */
export function groupIndexes(keys: readonly string[]): number[] {
  const seen = new Map<string, number>();
  return keys.map((key) => {
    let index = seen.get(key);
    if (index === undefined) seen.set(key, (index = seen.size));
    return index;
  });
}

/** How many groups there are among indexes from `groupIndexes`. */
export function groupCount(indexes: readonly number[]): number {
  return indexes.reduce((most, index) => Math.max(most, index), -1) + 1;
}
