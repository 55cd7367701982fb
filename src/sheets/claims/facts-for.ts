import type { Treatment } from '../../model/trial.ts';
import type { Fact, FactKind } from './fact.ts';
import type { NamedLevel } from './named-levels.ts';
import { says } from './phrases.ts';
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
    (fact) => fact.dimension === quantity.dimension && kinds.has(fact.kind) && isPer(fact, quantity),
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
  if (named.length === 0 || says(sentence, words.others)) return facts;
  const isNamed = (treatment: Treatment): boolean =>
    named.some(({ factor, level }) => treatment[factor] === level);
  // Where two are named, a difference is theirs.
  const pair = new Set(named.map(({ level }) => level)).size > 1;
  return facts.filter(({ treatments, kind }) => {
    if (treatments.length === 0) return true;
    return pair && kind === 'difference' ? treatments.every(isNamed) : treatments.some(isNamed);
  });
}
