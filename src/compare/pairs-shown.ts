import type { Seasons } from '../model/generated/seasons.ts';
import type { Choice } from './choice/choice.ts';

/** So many pairs can still be looked over; of more, those against one cultivar are shown. Common practice, no source. */
const mostPairs = 45;

/** The cultivar that differences are shown against; null where every pair is shown. */
export function shownAgainst(entry: Seasons, against: Choice['against']): string | null {
  const stands = (cultivar: string | null) =>
    cultivar !== null && entry.adjusted_means.some((mean) => mean.cultivar === cultivar);
  if (against === 'pairs') return null;
  if (against !== null && stands(against.cultivar)) return against.cultivar;
  if (entry.differences.length <= mostPairs) return null;
  return stands(entry.check) ? entry.check : highest(entry);
}

/** Where no check stands in the comparison, the others are held against the highest of the largest set. */
function highest(entry: Seasons): string | null {
  const [largest = []] = [...entry.linked_sets].sort((a, b) => b.length - a.length);
  const means = entry.adjusted_means.filter(({ cultivar }) => largest.includes(cultivar));
  return [...means].sort((a, b) => b.mean - a.mean)[0]?.cultivar ?? null;
}

/** The entry with those differences alone that are shown. */
export function withPairsAgainst(entry: Seasons, cultivar: string | null): Seasons {
  if (cultivar === null) return entry;
  return { ...entry, differences: entry.differences.filter(({ a, b }) => a === cultivar || b === cultivar) };
}
