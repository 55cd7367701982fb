/**
 * A file's size for people, in powers of 1000 as the SI prefixes mean them.
 *
 * @example fileSize(15300) // "15.3 kB"
 */
export function fileSize(bytes: number): string {
  if (bytes < 1000) return `${bytes}\u00a0B`;
  const [divisor, unit] = bytes < 1_000_000 ? [1000, 'kB'] : [1_000_000, 'MB'];
  const size = bytes / divisor;
  return `${size.toFixed(size < 100 ? 1 : 0)}\u00a0${unit}`;
}
