import type { Findings, Inference } from '../../model/findings.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Treatment, Trial } from '../../model/trial.ts';
import { digitsOfMean } from '../format/digits-of-mean.ts';
import { formatQuantity, type InBothUnits } from '../format/format-quantity.ts';
import { levelNames, treatmentName } from '../format/level-names.ts';
import { printedResolution } from '../format/printed-resolution.ts';
import { type Headline, headlineOf } from './headline.ts';
import { joinWords, listed, type Words } from './words.ts';

/** What the sentences of one trial are made with. */
interface Telling {
  trial: Trial;
  findings: Findings;
  headline: Headline;
  /** A treatment's name at the start of a sentence, and within one. */
  name: (treatment: Treatment) => string;
  within: (treatment: Treatment) => string;
  amount: (value: number) => InBothUnits;
}

/**
 * The trial's finding in one or two plain sentences: what differed and by how much, effect and interval
 * first; where the design supports no test, a description that says it is one.
 */
export function findingSentence(
  trial: Trial,
  findings: Findings,
  cultivars: readonly Cultivar[] = [],
): Words {
  const telling = tellingOf(trial, findings, cultivars);
  const { inference } = telling.headline;
  if (findings.treatments.length < 2) return onlyOne(telling);
  if (inference?.verdict !== 'tested') return described(telling);
  const check = testedAgainstCheck(telling, inference);
  return check ?? testedByPairs(telling, inference) ?? described(telling);
}

function tellingOf(trial: Trial, findings: Findings, cultivars: readonly Cultivar[]): Telling {
  const headline = headlineOf(trial, findings);
  const counts = findings.treatments.map((each) => headline.summaryOf(each)?.n ?? 0);
  const resolution = printedResolution(trial.metadata.variables[0]);
  const digits = Math.min(digitsOfMean(resolution, Math.max(1, ...counts)), resolution === null ? 1 : 0);
  const names = levelNames(trial, cultivars);
  return {
    trial,
    findings,
    headline,
    name: (treatment) => treatmentName(trial, treatment, names),
    within: (treatment) => withinSentence(treatmentName(trial, treatment, names), trial, treatment),
    amount: (value) => amountOf(value, findings.variable.unit, Math.max(0, digits)),
  };
}

/** A quantity with a digit more where it would else be printed as 0 in either unit though it is not. */
function amountOf(value: number, unit: string, digits: number): InBothUnits {
  const amount = formatQuantity(value, unit, digits);
  const vanished = [amount.metric, amount.us].some((text) => text !== null && !/[1-9]/.test(text));
  return value !== 0 && vanished && digits < 4 ? amountOf(value, unit, digits + 1) : amount;
}

/** A name that begins with its factor's ("solution strength 0.5") is no proper name: it begins small. */
function withinSentence(name: string, trial: Trial, treatment: Treatment): string {
  const first = (trial.metadata.factors ?? []).find(({ id }) => Object.hasOwn(treatment, id))?.name ?? '';
  const common = name.toLowerCase().startsWith(`${first.toLowerCase()} `);
  return common ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

function onlyOne({ findings, headline, name, amount }: Telling): Words {
  const [only] = findings.treatments;
  const mean = only ? (headline.summaryOf(only)?.mean ?? null) : null;
  if (only === undefined || mean === null) return ['No weight is known, so there is nothing to say yet.'];
  return [`${name(only.treatment)} gave `, amount(mean), ` ${headline.per} on average.`];
}

/** The heaviest and the lightest on average, said of these containers alone. */
function described({ findings, headline, name, within, amount }: Telling): Words {
  const means = findings.treatments
    .flatMap((each) => {
      const mean = headline.summaryOf(each)?.mean ?? null;
      return mean === null ? [] : [{ name: name(each.treatment), within: within(each.treatment), mean }];
    })
    .sort((a, b) => b.mean - a.mean);
  const [most, least] = [means[0], means.at(-1)];
  if (most === undefined || least === undefined || most === least) {
    return ['Too few weights are known to set treatments beside one another.'];
  }
  return [
    `${most.name} weighed most, `,
    amount(most.mean),
    ` ${headline.per} on average, and ${least.within} least, `,
    amount(least.mean),
    '. This describes what was weighed and tests nothing: another time the order may differ.',
  ];
}

/** Every level against the check: those told apart first, each with its interval. */
function testedAgainstCheck(telling: Telling, inference: Inference): Words | null {
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
  if (apart.length > 0) {
    const clauses = apart.map((entry, index): Words => {
      const verb = entry.estimate! > 0 ? 'outweighed' : 'weighed less than';
      const name = index === 0 ? telling.name : telling.within;
      const than = index === 0 ? `the check ${check}` : 'it';
      return [`${name(entry.treatment)} ${verb} ${than} by `, ...effect(telling, entry)];
    });
    sentences.push([...joinWords(clauses, '; '), '.']);
  }
  if (alike.length > 0) sentences.push(notToldApart(telling, alike, check, apart.length > 0));
  return joinWords(sentences, ' ');
}

type Compared = Inference['against_check'][number];

/** "51 g a plant (95% interval 17 g to 85 g)" */
function effect({ amount, headline }: Telling, entry: Pick<Compared, 'estimate' | 'lower' | 'upper'>): Words {
  const positive = entry.estimate! >= 0;
  const [near, far] = positive ? [entry.lower!, entry.upper!] : [-entry.upper!, -entry.lower!];
  return [
    amount(Math.abs(entry.estimate!)),
    ` ${headline.per} (95% interval `,
    amount(near),
    ' to ',
    amount(far),
    ')',
  ];
}

/** "Slate Egret differed from it by 14 g a plant, less than the 22 g that this trial could tell apart." */
function notToldApart(telling: Telling, alike: readonly Compared[], check: string, short: boolean): Words {
  const clauses = alike.map((entry, index): Words => {
    const reach = (entry.upper! - entry.lower!) / 2;
    const direction = entry.estimate! >= 0 ? 'heavier' : 'lighter';
    const name = index === 0 ? telling.name : telling.within;
    const than = short || index > 0 ? 'it' : `the check ${check}`;
    return [
      `${name(entry.treatment)} was `,
      telling.amount(Math.abs(entry.estimate!)),
      ` ${telling.headline.per} ${direction} than ${than}, less than the `,
      telling.amount(reach),
      ' that this trial could tell apart',
    ];
  });
  return [...joinWords(clauses, '; '), '.'];
}

/** The pairs of each tested term: the widest one that is told apart, and which are not. */
function testedByPairs(telling: Telling, inference: Inference): Words | null {
  const apart = inference.differences.filter(
    (pair) => pair.p_adjusted !== null && pair.p_adjusted < inference.alpha,
  );
  const alike = inference.differences.filter(
    (pair) => pair.p_adjusted !== null && pair.p_adjusted >= inference.alpha,
  );
  const first = [...apart].sort((a, b) => Math.abs(b.estimate!) - Math.abs(a.estimate!))[0];
  if (first) {
    const [more, less] = first.estimate! > 0 ? [first.a, first.b] : [first.b, first.a];
    const rest = alike.filter((pair) => sameFactors(pair.a, first.a));
    const words: Words = [
      `${telling.name(more)} outweighed ${telling.within(less)} by `,
      ...effect(telling, first),
      '.',
    ];
    if (rest.length === 0) return words;
    const pairs = rest.slice(0, 3).map((pair) => `${telling.within(pair.a)} and ${telling.within(pair.b)}`);
    const others = rest.length > 3 ? `, and ${rest.length - 3} more pairs` : '';
    return [...words, ` Not told apart: ${pairs.join('; ')}${others}.`];
  }
  const [nearest] = [...alike].sort((a, b) => Math.abs(b.estimate!) - Math.abs(a.estimate!));
  if (!nearest) return null;
  return [
    `No two treatments were told apart: the widest difference, between ${listed([telling.within(nearest.a), telling.within(nearest.b)])}, was `,
    ...effect(telling, nearest),
    '.',
  ];
}

function sameFactors(a: Treatment, b: Treatment): boolean {
  return Object.keys(a).join() === Object.keys(b).join();
}
