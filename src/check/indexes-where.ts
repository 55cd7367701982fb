/** The indexes of the items that a test holds for; quicker over long lists than pairs of index and item. */
export function indexesWhere<Item>(items: readonly Item[], test: (item: Item) => boolean): number[] {
  const found: number[] = [];
  items.forEach((item, index) => {
    if (test(item)) found.push(index);
  });
  return found;
}
