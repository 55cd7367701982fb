import type { Treatment } from '../../model/trial.ts';
import type { Fact, FactKind } from './fact.ts';
import type { NamedLevel } from './named-levels.ts';
import { phrases, says } from './phrases.ts';
import type { QuantityWords } from './quantity-words.ts';
import type { TypedQuantity } from './typed-quantity.ts';

/** Facts that a quantity of a sentence may be: of its dimension, of the sort that the sentence speaks of. */
export function factsFor(
  facts: readonly Fact[],
  quantity: TypedQuantity,
  sentence: string,
  words: QuantityWords,
): Fact[] {
  const kinds = kindsFor(sentence, quantity, words);
  return facts.filter(
    (fact) =>
      fact.dimension === quantity.dimension &&
      kinds.has(fact.kind) &&
      isPer(fact, quantity) &&
      isDirected(fact, quantity),
  );
}

/** A is 39% more than B, and B 28% less than A. */
function isDirected(fact: Fact, quantity: TypedQuantity): boolean {
  const [held, said] = [fact.direction, quantity.direction];
  return held === undefined || said === undefined || held === said;
}

/** Those of the one cut that a sentence speaks of, and what is of no cut; all where it speaks of several, or of none. */
export function factsOfCut(
  facts: readonly Fact[],
  sentence: string,
  cuts: Readonly<Record<string, readonly string[]>>,
  { severalCuts }: QuantityWords,
): readonly Fact[] {
  const spoken = Object.entries(cuts).filter(([, list]) => says(sentence, list));
  const [cut, another] = spoken;
  if (cut === undefined || another !== undefined) return facts;
  if (says(sentence.replace(phrases(cut[1]), ' '), severalCuts)) return facts;
  const number = Number(cut[0]);
  const whole = ['mean', 'difference', 'extreme'];
  return facts.filter(
    (fact) => fact.cut === number || (fact.cut === undefined && !whole.includes(fact.kind)),
  );
}

function kindsFor(sentence: string, { manner }: TypedQuantity, words: QuantityWords): Set<FactKind> {
  const told = (kind: keyof QuantityWords['kinds']): boolean => says(sentence, words.kinds[kind]);
  const kinds = new Set<FactKind>(['mean', 'difference', 'share']);
  const only = told('average') && !told('extreme') && !told('total');
  if (!only) for (const kind of ['extreme', 'total'] as const) kinds.add(kind);
  if (told('single')) for (const kind of ['single', 'extreme'] as const) kinds.add(kind);
  for (const kind of ['spread', 'limits', 'quartiles', 'place', 'planning'] as const)
    if (told(kind)) kinds.add(kind);
  if (manner === 'range')
    for (const kind of ['limits', 'quartiles', 'extreme', 'single'] as const) kinds.add(kind);
  if (manner === 'spread') for (const kind of ['spread', 'limits'] as const) kinds.add(kind);
  return kinds;
}

function isPer({ measure, kind }: Fact, { per }: TypedQuantity): boolean {
  if (per === null || kind === 'place') return true;
  if (per === 'per_container') return measure === 'per_container' || kind === 'total';
  if (kind === 'total') return false;
  if (kind === 'single' || measure === null) return true;
  if (per === 'plant') return measure === 'per_plant_set' || measure === 'per_plant_harvested';
  return measure === per;
}

/**
 * Those of the treatments that a sentence names. Where it names none, or speaks of others beside those named,
 * all of them.
 */
export function factsOfNamed(
  facts: readonly Fact[],
  named: readonly NamedLevel[],
  sentence: string,
  words: QuantityWords,
): readonly Fact[] {
  // "Two plants a pot" names a level, and "two" there is none of "the two".
  const beside = named.reduce((text, each) => text.replace(each.text, ' '), sentence);
  if (named.length === 0 || says(beside, words.others)) return facts;
  const isNamed = (treatment: Treatment): boolean =>
    named.some(({ factor, level }) => treatment[factor] === level);
  // Where two are named, a difference is theirs.
  const pair = new Set(named.map(({ level }) => level)).size > 1;
  return facts.filter(({ treatments, kind }) => {
    if (treatments.length === 0) return true;
    return pair && kind === 'difference' ? treatments.every(isNamed) : treatments.some(isNamed);
  });
}
