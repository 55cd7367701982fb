import type { Findings } from '../../model/findings.ts';
import type { Cultivar } from '../../model/library.ts';
import type { Treatment, Trial } from '../../model/trial.ts';
import { digitsOfMean } from '../format/digits-of-mean.ts';
import { formatQuantity, type InBothUnits } from '../format/format-quantity.ts';
import { levelNames, treatmentName } from '../format/level-names.ts';
import { printedResolution } from '../format/printed-resolution.ts';
import { type Headline, headlineOf } from './headline.ts';

/** What the sentences of one trial are made with. */
export interface Telling {
  trial: Trial;
  findings: Findings;
  headline: Headline;
  /** Weights are told by weighing, all else by more and less. */
  ofWeights: boolean;
  /** " a plant", " a pot"; nothing beside a unit that is by area already. */
  per: string;
  /** A treatment's name at the start of a sentence, and within one. */
  name: (treatment: Treatment) => string;
  within: (treatment: Treatment) => string;
  amount: (value: number) => InBothUnits;
  /** Two amounts to be held against each other: with digits enough that unlike ones never print alike. */
  amounts: (one: number, other: number) => [InBothUnits, InBothUnits];
}

export function tellingOf(trial: Trial, findings: Findings, cultivars: readonly Cultivar[]): Telling {
  const headline = headlineOf(trial, findings);
  const { unit } = findings.variable;
  const counts = findings.treatments.map((each) => headline.summaryOf(each)?.n ?? 0);
  const resolution = printedResolution(trial.metadata.variables[0]);
  const digits = Math.min(digitsOfMean(resolution, Math.max(1, ...counts)), resolution === null ? 1 : 0);
  const names = levelNames(trial, cultivars);
  return {
    trial,
    findings,
    headline,
    ofWeights: unit === 'g',
    per: unit.includes('/') ? '' : ` ${headline.per}`,
    name: (treatment) => treatmentName(trial, treatment, names),
    within: (treatment) => withinSentence(treatmentName(trial, treatment, names), trial, treatment),
    amount: (value) => amountOf(value, unit, Math.max(0, digits)),
    amounts: (one, other) => unlikeAmounts(one, other, unit, Math.max(0, digits)),
  };
}

function unlikeAmounts(one: number, other: number, unit: string, digits: number): [InBothUnits, InBothUnits] {
  const [a, b] = [amountOf(one, unit, digits), amountOf(other, unit, digits)];
  const alike = a.metric === b.metric || (a.us !== null && a.us === b.us);
  return one !== other && alike && digits < 6 ? unlikeAmounts(one, other, unit, digits + 1) : [a, b];
}

/** A quantity with a digit more where it would else be printed as 0 in either unit though it is not. */
export function amountOf(value: number, unit: string, digits: number): InBothUnits {
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
