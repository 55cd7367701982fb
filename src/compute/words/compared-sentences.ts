import type { Inference } from '../../model/findings.ts';
import type { Treatment } from '../../model/trial.ts';
import type { Telling } from './telling.ts';
import { joinWords, listed, type Words } from './words.ts';

type Compared = Inference['against_check'][number];

/** So many comparisons are told one by one; more are told together. */
const oneByOne = 3;

/** Every level against the check: those told apart first, each with its interval. Null where there is no check. */
export function againstCheckSentences(telling: Telling, inference: Inference): Words | null {
  const known = inference.against_check.filter(
    (entry) => entry.estimate !== null && entry.p_adjusted !== null && entry.lower !== null,
  );
  if (known.length === 0) return null;
  const factor = (telling.trial.metadata.factors ?? []).find(
    ({ id, check }) => check !== undefined && Object.hasOwn(known[0]!.treatment, id),
  );
  if (factor?.check === undefined) return null;
  const check = telling.within({ [factor.id]: factor.check });
  const apart = known.filter((entry) => entry.p_adjusted! < inference.alpha);
  const alike = known.filter((entry) => entry.p_adjusted! >= inference.alpha);
  const sentences: Words[] = [];
  if (apart.length > oneByOne) sentences.push(...toldApartTogether(telling, apart, check));
  else if (apart.length > 0) sentences.push(toldApart(telling, apart, check));
  if (alike.length > oneByOne) sentences.push(alikeTogether(telling, alike, check, apart.length > 0));
  else if (alike.length > 0) sentences.push(notToldApart(telling, alike, check, apart.length > 0));
  return joinWords(sentences, ' ');
}

/** "51 g a plant (95% interval 17 g to 85 g)" */
function effect({ amount, per }: Telling, entry: Pick<Compared, 'estimate' | 'lower' | 'upper'>): Words {
  const positive = entry.estimate! >= 0;
  const [near, far] = positive ? [entry.lower!, entry.upper!] : [-entry.upper!, -entry.lower!];
  return [amount(Math.abs(entry.estimate!)), `${per} (95% interval `, amount(near), ' to ', amount(far), ')'];
}

function toldApart(telling: Telling, apart: readonly Compared[], check: string): Words {
  const clauses = apart.map((entry, index): Words => {
    const verb = entry.estimate! > 0 ? telling.verbs.exceeded : telling.verbs.fellShort;
    const name = index === 0 ? telling.name : telling.within;
    const than = index === 0 ? `the check ${check}` : 'it';
    return [`${name(entry.treatment)} ${verb} ${than} by `, ...effect(telling, entry)];
  });
  return [...joinWords(clauses, '; '), '.'];
}

/** "A, B and C weighed less than the check H, by 55 g to 86 g a plant." */
function toldApartTogether(telling: Telling, apart: readonly Compared[], check: string): Words[] {
  const { verbs, name, within, amount, per } = telling;
  return [true, false].flatMap((above): Words[] => {
    const group = apart.filter((entry) => entry.estimate! > 0 === above);
    if (group.length === 0) return [];
    const sizes = group.map((entry) => Math.abs(entry.estimate!)).sort((a, b) => a - b);
    const names = group.map(({ treatment }, index) => (index === 0 ? name : within)(treatment));
    const verb = above ? verbs.exceeded : verbs.fellShort;
    const [least, most] = [sizes[0]!, sizes.at(-1)!];
    const range: Words = group.length === 1 ? [amount(most)] : [amount(least), ' to ', amount(most)];
    return [[`${listed(names)} ${verb} the check ${check} by `, ...range, `${per}.`]];
  });
}

/** "Slate Egret was 2 g a plant heavier than it, less than the 40 g that this trial could tell apart." */
function notToldApart(telling: Telling, alike: readonly Compared[], check: string, short: boolean): Words {
  const { verbs, name, within, amount, per } = telling;
  const clauses = alike.map((entry, index): Words => {
    const reach = (entry.upper! - entry.lower!) / 2;
    const direction = entry.estimate! >= 0 ? verbs.higher : verbs.lower;
    const than = short || index > 0 ? 'it' : `the check ${check}`;
    return [
      `${(index === 0 ? name : within)(entry.treatment)} was `,
      amount(Math.abs(entry.estimate!)),
      `${per} ${direction} than ${than}, less than the `,
      amount(reach),
      ' that this trial could tell apart',
    ];
  });
  return [...joinWords(clauses, '; '), '.'];
}

function alikeTogether(telling: Telling, alike: readonly Compared[], check: string, short: boolean): Words {
  const names = alike.map(({ treatment }, index) => (index === 0 ? telling.name : telling.within)(treatment));
  const widest = Math.max(...alike.map((entry) => (entry.upper! - entry.lower!) / 2));
  return [
    `${listed(names)} were not told apart from ${short ? 'it' : `the check ${check}`}: this trial could tell apart `,
    telling.amount(widest),
    `${telling.per}.`,
  ];
}

/** The widest pair that is told apart, and which pairs of its term are not; null where no pair was tested. */
export function pairSentences(telling: Telling, inference: Inference): Words | null {
  const { name, within, verbs } = telling;
  const tested = inference.differences.filter((pair) => pair.p_adjusted !== null);
  const widestFirst = [...tested].sort((a, b) => Math.abs(b.estimate!) - Math.abs(a.estimate!));
  const first = widestFirst.find((pair) => pair.p_adjusted! < inference.alpha);
  if (!first) {
    const [widest] = widestFirst;
    if (!widest) return null;
    const pair = listed([within(widest.a), within(widest.b)]);
    return [
      `No two treatments were told apart: the widest difference, between ${pair}, was `,
      ...effect(telling, widest),
      '.',
    ];
  }
  const [more, less] = first.estimate! > 0 ? [first.a, first.b] : [first.b, first.a];
  const words: Words = [
    `${name(more)} ${verbs.exceeded} ${within(less)} by `,
    ...effect(telling, first),
    '.',
  ];
  const rest = tested.filter((pair) => pair.p_adjusted! >= inference.alpha && sameFactors(pair.a, first.a));
  if (rest.length === 0) return words;
  const pairs = rest.slice(0, oneByOne).map((pair) => `${within(pair.a)} and ${within(pair.b)}`);
  const others = rest.length > oneByOne ? `, and ${rest.length - oneByOne} more pairs` : '';
  return [...words, ` Not told apart: ${pairs.join('; ')}${others}.`];
}

function sameFactors(a: Treatment, b: Treatment): boolean {
  return Object.keys(a).join() === Object.keys(b).join();
}
