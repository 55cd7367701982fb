import { digitsAcrossSeasons } from '../../compute/format/digits-across-seasons.ts';
import { formatQuantity } from '../../compute/format/format-quantity.ts';
import { formatRange } from '../../compute/format/format-range.ts';
import { measureAcrossSeasons } from '../../compute/words/measure-across-seasons.ts';
import type { Words } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { pairBetween } from '../pair-between.ts';
import { tell } from '../../compute/words/tell.ts';
import { say } from '../../model/say.ts';

type Name = (cultivar: string) => string;

const alpha = 0.05;

/**
 * The answer in a sentence: which cultivar of the largest linked set gave most, from how many of the others
 * that can be told, and by how much it led the check (or the next one); or why there is no answer.
 */
export function seasonSentence(entry: Seasons, name: Name): Words {
  if (entry.verdict === 'not compared')
    return [`${say('No cultivars can be compared across seasons.')} ${entry.reason}`];
  const set = setSpokenOf(entry);
  const [best, ...others] = entry.adjusted_means
    .filter(({ cultivar }) => set.includes(cultivar))
    .sort((a, b) => b.mean - a.mean);
  const digits = digitsAcrossSeasons(entry);
  const told = others.filter(({ cultivar }) => {
    const p = pairBetween(entry, best!.cultivar, cultivar)?.p_adjusted ?? null;
    return p !== null && p < alpha;
  });
  return tell('{cultivar} gave the most {measure}, {amount} over the trials, {told}{lead}.', {
    cultivar: name(best!.cultivar),
    measure: measureAcrossSeasons(entry),
    amount: formatQuantity(best!.mean, entry.unit, digits),
    told: howFarTold(told, others, name),
    lead: lead(entry, best!.cultivar, others, digits, name),
  });
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
  const all =
    others.length === 1 ? name(only!.cultivar) : say('any of the {count} others', { count: others.length });
  if (told.length === 0) return say('but cannot be told apart from {all}', { all });
  if (told.length < others.length)
    return say('and can be told apart from {told} of {count} others', {
      told: told.length,
      count: others.length,
    });
  return others.length === 1
    ? say('and can be told apart from it')
    : say('and can be told apart from all {count} others', { count: told.length });
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
  return tell(
    check
      ? ': it led the check, {other}, by {amount} (95% interval {range})'
      : ': it led the next, {other}, by {amount} (95% interval {range})',
    {
      other: name(other),
      amount: formatQuantity(pair.estimate, entry.unit, digitsOfLead(pair.estimate, digits)),
      range: formatRange(pair.lower, pair.upper, entry.unit, digits),
    },
  );
}

/** A lead that is there must not print as none: up to three digits more than the rest. */
function digitsOfLead(estimate: number, digits: number): number {
  const shown = [0, 1, 2, 3].find((more) => Number(estimate.toFixed(digits + more)) !== 0);
  return digits + (shown ?? 0);
}
