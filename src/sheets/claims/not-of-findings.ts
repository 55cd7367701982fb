import type { Trial } from '../../model/trial.ts';
import type { Sentence } from '../prose/passage.ts';
import { phrases, says } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';
import type { TypedQuantity } from './typed-quantity.ts';

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
  const after = text.slice(quantity.end);
  const before = text.slice(0, quantity.index);
  if (/(?:\bper|\bpor|\bevery|\bcada|\/)\s*$/i.test(before)) return true;
  if (quantity.dimension === '%') return isOtherPercent(before, after, text, words, namesLevel);
  // "Twice as much" of no treatment that is named is of anything.
  if (quantity.dimension === 'times' && !namesLevel) return true;
  const salts = trials.flatMap(({ metadata }) => metadata.nutrients?.salts ?? []).map(({ name }) => name);
  const materials = [...words.materials, ...salts];
  if ((passage.kind === 'row' || quantity.dimension === 'times') && says(text, materials)) return true;
  const next = clause(after);
  if (says(firstWords(next, 2), materials) || says(firstWords(next, 3), words.vessels)) return true;
  if (/^\W*(?:of|de)\s/i.test(next) && says(firstWords(next, 6), materials)) return true;
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
