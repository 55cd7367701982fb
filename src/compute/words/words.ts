import type { FirstUnits } from '../../model/first-units.ts';
import { say } from '../../model/say.ts';
import type { InBothUnits } from '../format/format-quantity.ts';

/** A text whose quantities are still in both units, so that a page can show either: pieces in their order. */
export type Words = readonly (string | InBothUnits)[];

/** The text with one unit alone, as for a description in a file: metric where nothing else is asked for. */
export function plainText(words: Words, units: FirstUnits = 'metric'): string {
  const inUnits = ({ metric, us }: InBothUnits) => (units === 'us' && us !== null ? us : metric);
  return words.map((piece) => (typeof piece === 'string' ? piece : inUnits(piece))).join('');
}

/** Joins texts with a separator between them. */
export function joinWords(texts: readonly Words[], between: string): Words {
  return texts.flatMap((text, index) => (index === 0 ? [...text] : [between, ...text]));
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[]): string {
  if (items.length < 2) return items[0] ?? '';
  return say('{items} and {last}', { items: items.slice(0, -1).join(', '), last: items.at(-1)! });
}
