import { digitsAcrossSeasons } from '../../compute/format/digits-across-seasons.ts';
import { formatQuantity } from '../../compute/format/format-quantity.ts';
import { formatRange } from '../../compute/format/format-range.ts';
import { measureAcrossSeasons } from '../../compute/words/measure-across-seasons.ts';
import type { Words } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { pairBetween } from '../pair-between.ts';

type Name = (cultivar: string) => string;

const alpha = 0.05;

/**
 * The answer in a sentence: which cultivar of the largest linked set gave most, from how many of the others
 * that can be told, and by how much it led the check (or the next one); or why there is no answer.
 */
export function seasonSentence(entry: Seasons, name: Name): Words {
  if (entry.verdict === 'not compared')
    return [`No cultivars can be compared across seasons. ${entry.reason}`];
  const set = setSpokenOf(entry);
  const [best, ...others] = entry.adjusted_means
    .filter(({ cultivar }) => set.includes(cultivar))
    .sort((a, b) => b.mean - a.mean);
  const digits = digitsAcrossSeasons(entry);
  const told = others.filter(({ cultivar }) => {
    const p = pairBetween(entry, best!.cultivar, cultivar)?.p_adjusted ?? null;
    return p !== null && p < alpha;
  });
  return [
    `${name(best!.cultivar)} gave the most ${measureAcrossSeasons(entry)}, `,
    formatQuantity(best!.mean, entry.unit, digits),
    ` over the trials, ${howFarTold(told, others, name)}`,
    ...lead(entry, best!.cultivar, others, digits, name),
    '.',
  ];
}

/** The largest linked set in which differences have an error: the one that the sentence is about. */
export function setSpokenOf(entry: Seasons): readonly string[] {
  const tested = entry.linked_sets.filter((set) =>
    entry.differences.some(({ a, p_adjusted }) => p_adjusted !== null && set.includes(a)),
  );
  return [...tested].sort((a, b) => b.length - a.length)[0] ?? [];
}

function howFarTold(told: Seasons['adjusted_means'], others: Seasons['adjusted_means'], name: Name): string {
  const [only] = others;
  const all = others.length === 1 ? name(only!.cultivar) : `any of the ${others.length} others`;
  if (told.length === 0) return `but cannot be told apart from ${all}`;
  if (told.length < others.length)
    return `and can be told apart from ${told.length} of ${others.length} others`;
  return others.length === 1
    ? 'and can be told apart from it'
    : `and can be told apart from all ${told.length} others`;
}

function lead(
  entry: Seasons,
  best: string,
  others: Seasons['adjusted_means'],
  digits: number,
  name: Name,
): Words {
  const check = others.find(({ cultivar }) => cultivar === entry.check);
  const other = (check ?? others[0]!).cultivar;
  const pair = pairBetween(entry, best, other);
  if (pair === null || pair.lower === null || pair.upper === null) return [];
  return [
    `: it led ${check ? 'the check' : 'the next'}, ${name(other)}, by `,
    formatQuantity(pair.estimate, entry.unit, digitsOfLead(pair.estimate, digits)),
    ' (95% interval ',
    formatRange(pair.lower, pair.upper, entry.unit, digits),
    ')',
  ];
}

/** A lead that is there must not print as none: up to three digits more than the rest. */
function digitsOfLead(estimate: number, digits: number): number {
  const shown = [0, 1, 2, 3].find((more) => Number(estimate.toFixed(digits + more)) !== 0);
  return digits + (shown ?? 0);
}
