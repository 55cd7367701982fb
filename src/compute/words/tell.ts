import { conjunctionBefore } from '../../model/conjunction-before.ts';
import { pattern } from '../../model/say.ts';
import type { InBothUnits } from '../format/format-quantity.ts';
import type { Words } from './words.ts';

/**
 * A message whose values may be quantities in both units, or whole texts of such: pieces in the order that the
 * language being written puts them in.
 *
 * @param english the message in English: the key of messages.json
 * @param values what stands for each `{name}`
 */
export function tell(
  english: string,
  values: Readonly<Record<string, string | number | InBothUnits | Words>> = {},
): Words {
  const pieces: (string | InBothUnits)[] = [];
  // Every second piece of the split is a name.
  for (const [index, piece] of pattern(english)
    .split(/\{(\w+)\}/)
    .entries()) {
    const value = index % 2 === 1 ? values[piece] : piece;
    if (value === undefined) throw new RangeError(`tell was not given "${piece}" of "${english}"`);
    const before = pieces.at(-1);
    if (index % 2 === 1 && typeof before === 'string') pieces[pieces.length - 1] = leadingTo(value, before);
    if (typeof value === 'object' && 'length' in value) pieces.push(...value);
    else if (value !== '') pieces.push(typeof value === 'number' ? String(value) : value);
  }
  return joined(pieces);
}

/** A text of the message that may end in "and" or "or", before the value that follows it. */
function leadingTo(value: string | number | InBothUnits | Words, text: string): string {
  const first = typeof value === 'object' && 'length' in value ? value[0] : value;
  if (typeof first !== 'string' && typeof first !== 'number') return text;
  return text.replace(/(?<= )[yo](?= $)/, (conjunction) => conjunctionBefore(String(first), conjunction));
}

/** Neighbouring texts as one, so that the pieces are those a reader would count. */
function joined(pieces: readonly (string | InBothUnits)[]): Words {
  const words: (string | InBothUnits)[] = [];
  for (const piece of pieces) {
    const last = words.at(-1);
    if (typeof piece === 'string' && typeof last === 'string') words[words.length - 1] = last + piece;
    else words.push(piece);
  }
  return words;
}
