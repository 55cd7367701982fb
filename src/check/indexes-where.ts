/** The indexes of the items that a test holds for; quicker over long lists than pairs of index and item. */
export function indexesWhere<Item>(items: readonly Item[], test: (item: Item) => boolean): number[] {
  const found: number[] = [];
  for (let index = 0; index < items.length; index += 1) {
    if (test(items[index]!)) found.push(index);
  }
  return found;
}
