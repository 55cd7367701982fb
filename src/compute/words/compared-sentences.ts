import { say, sayCount } from '../../model/say.ts';
import type { Inference } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import type { Telling } from './telling.ts';
import { tell } from './tell.ts';
import { joinWords, listed, type Words } from './words.ts';

type Compared = Inference['against_check'][number];

/** So many comparisons are told one by one; more are told together. */
const oneByOne = 3;

/**
 * Every level against the check: those told apart first, each with its interval. Where several factors have a
 * check, the levels of each are told of against their own. Null where there is no check.
 */
export function againstCheckSentences(telling: Telling, inference: Inference): Words | null {
  const known = inference.against_check.filter(
    (entry) => entry.estimate !== null && entry.p_adjusted !== null && entry.lower !== null,
  );
  const sentences = (telling.trial.metadata.factors ?? []).flatMap(({ id, check }): Words[] => {
    const levels = known.filter(({ treatment }) => Object.hasOwn(treatment, id));
    if (check === undefined || levels.length === 0) return [];
    return levelsAgainstCheck(telling, levels, telling.within({ [id]: check }), inference.alpha);
  });
  if (sentences.length === 0) return null;
  const apart = interactionSentence(telling, inference);
  return joinWords(apart === null ? sentences : [...sentences, apart], ' ');
}

function levelsAgainstCheck(
  telling: Telling,
  levels: readonly Compared[],
  check: string,
  alpha: number,
): Words[] {
  const apart = levels.filter((entry) => entry.p_adjusted! < alpha);
  const alike = levels.filter((entry) => entry.p_adjusted! >= alpha);
  const sentences: Words[] = [];
  if (apart.length > oneByOne) sentences.push(...toldApartTogether(telling, apart, check));
  else if (apart.length > 0) sentences.push(toldApart(telling, apart, check));
  if (alike.length > oneByOne) sentences.push(alikeTogether(telling, alike, check, apart.length > 0));
  else if (alike.length > 0) sentences.push(notToldApart(telling, alike, check, apart.length > 0));
  return sentences;
}

/** An average over another factor must not pass for what happened at each of its levels. */
function interactionSentence({ trial }: Telling, { anova, alpha }: Inference): Words | null {
  const found = anova.find(({ term, p }) => term.includes(':') && p !== null && p < alpha);
  if (found === undefined) return null;
  const nameOf = new Map((trial.metadata.factors ?? []).map(({ id, name }) => [id, name]));
  const factors = found.term.split(':').map((id) => nameOf.get(id) ?? id);
  return tell('These are averages: what one did depended on the other ({factors}).', {
    factors: factors.join(' × '),
  });
}

/** A sentence in the words for weights or for other measures, for more and for less. */
interface Forms {
  outweighed: string;
  weighedLess: string;
  exceeded: string;
  fellShort: string;
}

function formOf({ ofWeights }: Telling, above: boolean, forms: Forms): string {
  if (ofWeights) return above ? forms.outweighed : forms.weighedLess;
  return above ? forms.exceeded : forms.fellShort;
}

const againstCheck: Forms = {
  outweighed: '{name} outweighed the check {check} by {effect}',
  weighedLess: '{name} weighed less than the check {check} by {effect}',
  exceeded: '{name} exceeded the check {check} by {effect}',
  fellShort: '{name} fell short of the check {check} by {effect}',
};

const againstIt: Forms = {
  outweighed: '{name} outweighed it by {effect}',
  weighedLess: '{name} weighed less than it by {effect}',
  exceeded: '{name} exceeded it by {effect}',
  fellShort: '{name} fell short of it by {effect}',
};

const withinReachOfCheck: Forms = {
  outweighed:
    '{name} was {amount}{per} heavier than the check {check}, less than the {reach} that this trial could tell apart',
  weighedLess:
    '{name} was {amount}{per} lighter than the check {check}, less than the {reach} that this trial could tell apart',
  exceeded:
    '{name} was {amount}{per} higher than the check {check}, less than the {reach} that this trial could tell apart',
  fellShort:
    '{name} was {amount}{per} lower than the check {check}, less than the {reach} that this trial could tell apart',
};

const withinReachOfIt: Forms = {
  outweighed:
    '{name} was {amount}{per} heavier than it, less than the {reach} that this trial could tell apart',
  weighedLess:
    '{name} was {amount}{per} lighter than it, less than the {reach} that this trial could tell apart',
  exceeded: '{name} was {amount}{per} higher than it, less than the {reach} that this trial could tell apart',
  fellShort: '{name} was {amount}{per} lower than it, less than the {reach} that this trial could tell apart',
};

/** "51 g a plant (95% interval 17 g to 85 g)" */
function effect({ amount, per }: Telling, entry: Pick<Compared, 'estimate' | 'lower' | 'upper'>): Words {
  const positive = entry.estimate! >= 0;
  const [near, far] = positive ? [entry.lower!, entry.upper!] : [-entry.upper!, -entry.lower!];
  return tell('{amount}{per} (95% interval {from} to {to})', {
    amount: amount(Math.abs(entry.estimate!)),
    per,
    from: amount(near),
    to: amount(far),
  });
}

function toldApart(telling: Telling, apart: readonly Compared[], check: string): Words {
  const clauses = apart.map((entry, index): Words => {
    const name = (index === 0 ? telling.name : telling.within)(entry.treatment);
    const form = formOf(telling, entry.estimate! > 0, index === 0 ? againstCheck : againstIt);
    return tell(form, { name, check, effect: effect(telling, entry) });
  });
  return [...joinWords(clauses, '; '), '.'];
}

/** "A, B and C weighed less than the check H by 55 g to 86 g a plant." */
function toldApartTogether(telling: Telling, apart: readonly Compared[], check: string): Words[] {
  const { name, within, amount, per } = telling;
  return [true, false].flatMap((above): Words[] => {
    const group = apart.filter((entry) => entry.estimate! > 0 === above);
    if (group.length === 0) return [];
    const sizes = group.map((entry) => Math.abs(entry.estimate!)).sort((a, b) => a - b);
    const names = group.map(({ treatment }, index) => (index === 0 ? name : within)(treatment));
    const [least, most] = [sizes[0]!, sizes.at(-1)!];
    const range =
      group.length === 1 ? [amount(most)] : tell('{from} to {to}', { from: amount(least), to: amount(most) });
    const form = formOf(telling, above, againstCheck);
    return [[...tell(form, { name: listed(names), check, effect: [...range, per] }), '.']];
  });
}

/** "Slate Egret was 2 g a plant heavier than it, less than the 40 g that this trial could tell apart." */
function notToldApart(telling: Telling, alike: readonly Compared[], check: string, short: boolean): Words {
  const { name, within, amounts, per } = telling;
  const clauses = alike.map((entry, index): Words => {
    const [amount, reach] = amounts(Math.abs(entry.estimate!), (entry.upper! - entry.lower!) / 2);
    const forms = short || index > 0 ? withinReachOfIt : withinReachOfCheck;
    return tell(formOf(telling, entry.estimate! >= 0, forms), {
      name: (index === 0 ? name : within)(entry.treatment),
      amount,
      per,
      check,
      reach,
    });
  });
  return [...joinWords(clauses, '; '), '.'];
}

function alikeTogether(telling: Telling, alike: readonly Compared[], check: string, short: boolean): Words {
  const names = alike.map(({ treatment }, index) => (index === 0 ? telling.name : telling.within)(treatment));
  const widest = Math.max(...alike.map((entry) => (entry.upper! - entry.lower!) / 2));
  const values = { names: listed(names), check, reach: telling.amount(widest), per: telling.per };
  return short
    ? tell('{names} were not told apart from it: this trial could tell apart {reach}{per}.', values)
    : tell(
        '{names} were not told apart from the check {check}: this trial could tell apart {reach}{per}.',
        values,
      );
}

/** The widest pair that is told apart, and which pairs of its term are not; null where no pair was tested. */
export function pairSentences(telling: Telling, inference: Inference): Words | null {
  const { name, within } = telling;
  const tested = inference.differences.filter((pair) => pair.p_adjusted !== null);
  const widestFirst = [...tested].sort((a, b) => Math.abs(b.estimate!) - Math.abs(a.estimate!));
  const first = widestFirst.find((pair) => pair.p_adjusted! < inference.alpha);
  if (!first) {
    const [widest] = widestFirst;
    if (!widest) return null;
    const pair = listed([within(widest.a), within(widest.b)]);
    return tell('No two treatments were told apart: the widest difference, between {pair}, was {effect}.', {
      pair,
      effect: effect(telling, widest),
    });
  }
  const [more, less] = first.estimate! > 0 ? [first.a, first.b] : [first.b, first.a];
  const values = { more: name(more), less: within(less), effect: effect(telling, first) };
  const words = telling.ofWeights
    ? tell('{more} outweighed {less} by {effect}.', values)
    : tell('{more} exceeded {less} by {effect}.', values);
  const rest = tested.filter((pair) => pair.p_adjusted! >= inference.alpha && sameFactors(pair.a, first.a));
  if (rest.length === 0) return words;
  const pairs = rest
    .slice(0, oneByOne)
    .map((pair) => listed([within(pair.a), within(pair.b)]))
    .join('; ');
  const count = rest.length - oneByOne;
  const alike =
    count > 0
      ? sayCount(
          count,
          'Not told apart: {pairs}, and {count} more pair.',
          'Not told apart: {pairs}, and {count} more pairs.',
          { pairs },
        )
      : say('Not told apart: {pairs}.', { pairs });
  return [...words, ` ${alike}`];
}

function sameFactors(a: Treatment, b: Treatment): boolean {
  return Object.keys(a).join() === Object.keys(b).join();
}
