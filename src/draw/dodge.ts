/**
 * Levels for dots in a row, so that none lies on another: each takes the lowest level where it touches no
 * dot placed before it. In the order of the values and, among equals, of the list: the same values always
 * give the same picture.
 *
 * @param places where the dots are, in px
 * @param diameter of a dot, in px
 * @returns the level of each dot, 0 the lowest
 */
export function dodge(places: readonly number[], diameter: number): number[] {
  const levels = places.map(() => 0);
  const lastInLevel: number[] = [];
  const order = places.map((_, index) => index).sort((a, b) => places[a]! - places[b]! || a - b);
  for (const index of order) {
    const place = places[index]!;
    const free = lastInLevel.findIndex((last) => place - last >= diameter);
    const level = free < 0 ? lastInLevel.length : free;
    lastInLevel[level] = place;
    levels[index] = level;
  }
  return levels;
}
