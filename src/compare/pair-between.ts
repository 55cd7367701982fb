import type { Seasons } from '../model/generated/seasons.ts';

/** The difference of two cultivars, the first less the second; null where no chain of trials connects them. */
export function pairBetween(
  { differences }: Pick<Seasons, 'differences'>,
  first: string,
  second: string,
): Seasons['differences'][number] | null {
  const straight = differences.find(({ a, b }) => a === first && b === second);
  if (straight) return straight;
  const turned = differences.find(({ a, b }) => a === second && b === first);
  if (!turned) return null;
  const { estimate, lower, upper } = turned;
  return {
    ...turned,
    a: first,
    b: second,
    estimate: -estimate,
    lower: upper === null ? null : -upper,
    upper: lower === null ? null : -lower,
  };
}
