/** Negative where a is the older of two semantic versions, positive where it is the newer, 0 where they are the same. */
export function compareVersions(a: string, b: string): number {
  const other = b.split('.').map(Number);
  const differences = a.split('.').map((part, index) => Number(part) - (other[index] ?? 0));
  return differences.find((difference) => difference !== 0) ?? 0;
}
