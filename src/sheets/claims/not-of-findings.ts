import type { Trial } from '../../model/trial.ts';
import type { Sentence } from '../prose/passage.ts';
import { phrases, says } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';
import type { TypedQuantity } from './typed-quantity.ts';

/** How far from a number the words may stand that say what it is of, in characters: longer than any sentence. */
const farthest = 500;

/**
 * True for a weight or a percentage that is none of what a trial finds: a dose of salt, the step of a scale, the
 * size of a bag, a price by weight, a percentage of humidity. What may be a finding is not let off.
 */
export function isNotOfFindings(
  { text, passage }: Sentence,
  quantity: TypedQuantity,
  trials: readonly Trial[],
  words: QuantityWords,
  namesLevel: boolean,
): boolean {
  const after = text.slice(quantity.end, quantity.end + farthest);
  const before = text.slice(Math.max(0, quantity.index - farthest), quantity.index);
  if (/(?:\bper|\bpor|\bevery|\bcada|\/)\s*$/i.test(before)) return true;
  if (quantity.dimension === '%') return isOtherPercent(before, after, text, words, namesLevel);
  // "Twice as much" of no treatment that is named is of anything.
  if (quantity.dimension === 'times' && !namesLevel) return true;
  const salts = trials.flatMap(({ metadata }) => metadata.nutrients?.salts ?? []).map(({ name }) => name);
  const ofMaterials = (part: string): boolean => says(part, words.materials) || says(part, salts);
  if ((passage.kind === 'row' || quantity.dimension === 'times') && ofMaterials(text)) return true;
  const next = clause(after);
  if (ofMaterials(firstWords(next, 2)) || says(firstWords(next, 3), words.vessels)) return true;
  if (/^\W*(?:of|de)\s/i.test(next) && ofMaterials(firstWords(next, 6))) return true;
  if (says(before, words.dosing)) return true;
  return says(lastWords(before, 7), words.scales);
}

function isOtherPercent(
  before: string,
  after: string,
  text: string,
  words: QuantityWords,
  namesLevel: boolean,
): boolean {
  const next = clause(after);
  if (says(firstWords(next, 2), words.otherPercents)) return true;
  if (says(firstWords(next, 2), words.yieldPercents)) return false;
  if (says(firstWords(next, 4), words.otherPercents)) return true;
  if (says(lastWords(clauseBefore(before), 4), words.otherPercents)) return true;
  return !namesLevel && text.search(phrases(words.yieldPercents)) === -1;
}

/** Up to where the thought goes on. */
function clause(text: string): string {
  return text.split(/[.;:,()|]/, 1)[0] ?? '';
}

function clauseBefore(text: string): string {
  return text.split(/[.;:,()|]/).at(-1) ?? '';
}

function firstWords(text: string, count: number): string {
  return text.trim().split(/\s+/).slice(0, count).join(' ');
}

function lastWords(text: string, count: number): string {
  return text.trim().split(/\s+/).slice(-count).join(' ');
}
