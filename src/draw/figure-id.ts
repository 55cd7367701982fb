/** A figure's id from its parts: lower-case letters, digits and hyphens, so that it works in addresses. */
export function figureId(...parts: readonly (string | number)[]): string {
  return parts
    .map((part) =>
      String(part)
        .normalize('NFKD')
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-+|-+$/g, ''),
    )
    .filter((part) => part !== '')
    .join('-');
}

/** The same ids, those that occur again with a number behind them. */
export function distinct(ids: readonly string[]): string[] {
  const taken = new Set<string>();
  return ids.map((id) => {
    let candidate = id;
    for (let count = 2; taken.has(candidate); count += 1) candidate = `${id}-${String(count)}`;
    taken.add(candidate);
    return candidate;
  });
}
