import { measureName } from '../compute/tables/measures.ts';
import { workingId } from '../compute/workings/working.ts';
import type { Inference, Summary } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { Treatment, Trial } from '../model/trial.ts';
import { askedDigits, askedMeasure, inferenceOf } from './asked-measure.ts';
import { askedCut, askedTreatment, fits } from './asked-treatment.ts';
import type { FindQuantity } from './quantity.ts';
import { workingAnchor } from './working-anchor.ts';

type Statistic = Exclude<keyof Summary, 'n' | 'ci95' | 'missing' | 'reason' | 'cv'>;

/** A statistic of the values of one treatment. */
export function ofSummary(statistic: Statistic | 'n' | 'cv'): FindQuantity {
  return (asked, found) => {
    const { trial, findings } = found;
    const given = askedCut(asked, findings);
    const treatment = given && askedTreatment(asked, found, given.descriptions);
    if (given === null || treatment === null) return null;
    const measure = askedMeasure(asked, trial);
    const anchor = workingAnchor(given.cut, treatment.row, measure, given.descriptions);
    const summary = treatment.description[measure];
    const digits = askedDigits(asked, trial, findings, measure);
    if (summary === null) {
      const reason =
        treatment.description.reason ??
        say('the trial gives nothing {measure}', { measure: measureName(measure) });
      return { value: null, reason, unit: '', digits, anchor };
    }
    const { reason } = summary;
    if (statistic === 'n') return { value: summary.n, unit: '', digits: 0, anchor };
    if (statistic === 'cv') {
      const percent = asked.attribute('digits') === null ? 1 : digits;
      return { value: summary.cv, reason, unit: '%', digits: percent, anchor };
    }
    const inference = inferenceOf(findings, measure, given.cut);
    const interval =
      statistic === 'mean'
        ? (sameMean(inference, treatment.description.treatment, summary.mean) ?? summary.ci95)
        : null;
    return { value: summary[statistic], reason, unit: findings.variable.unit, digits, interval, anchor };
  };
}

/** The analysis's interval of a mean, where its mean is the plain one: in a balanced trial. */
function sameMean(
  inference: Inference | null,
  treatment: Treatment,
  mean: number | null,
): [number, number] | null {
  const found = adjustedMeanOf(inference, treatment);
  if (mean === null || !found || found.mean === null || found.lower === null || found.upper === null)
    return null;
  return Math.abs(found.mean - mean) <= 1e-9 * Math.abs(mean) ? [found.lower, found.upper] : null;
}

function adjustedMeanOf(
  inference: Inference | null,
  treatment: Treatment,
): Inference['means'][number] | undefined {
  return inference?.means.find((each) => fits(each.treatment, treatment));
}

/** The mean that the analysis gives, adjusted for what the design holds, with its own interval. */
export const adjustedMean: FindQuantity = (asked, found) => {
  const { trial, findings } = found;
  const given = askedCut(asked, findings);
  const treatment = given && askedTreatment(asked, found, given.descriptions);
  if (given === null || treatment === null) return null;
  const measure = askedMeasure(asked, trial);
  const inference = inferenceOf(findings, measure, given.cut);
  const mean = adjustedMeanOf(inference, treatment.description.treatment);
  const reason =
    mean?.reason ??
    inference?.reason ??
    say('the trial was not analysed {measure}', { measure: measureName(measure) });
  const interval =
    mean && mean.lower !== null && mean.upper !== null ? ([mean.lower, mean.upper] as const) : null;
  const digits = askedDigits(asked, trial, findings, measure);
  return {
    value: mean?.mean ?? null,
    reason,
    unit: findings.variable.unit,
    digits,
    interval,
    anchor: 'said',
  };
};

/** The treatment's mean in percent of the check's. */
export const percentOfCheck: FindQuantity = (asked, found) => {
  const given = askedCut(asked, found.findings);
  const treatment = given && askedTreatment(asked, found, given.descriptions);
  if (given === null || treatment === null) return null;
  const measure = askedMeasure(asked, found.trial);
  const inference = inferenceOf(found.findings, measure, given.cut);
  const entry = inference?.against_check.find((each) =>
    fits(treatment.description.treatment, each.treatment),
  );
  const reason =
    inference?.verdict === 'not tested'
      ? inference.reason
      : (entry?.reason ?? say('the analysis compares nothing with a check here'));
  const digits = Number(asked.attribute('digits') ?? 0);
  return { value: entry?.percent_of_check ?? null, reason, unit: '%', digits, anchor: 'said' };
};

/** How many experimental units each treatment had: the replicates of the design. */
export const replicates: FindQuantity = (asked, found) => {
  const given = askedCut(asked, found.findings);
  const treatment = given && askedTreatment(asked, found, given.descriptions);
  if (given === null || treatment === null) return null;
  const inference = inferenceOf(found.findings, askedMeasure(asked, found.trial), given.cut);
  const unit = inference?.units.length === 1 ? inference.units[0] : undefined;
  const level = unit && treatment.description.treatment[unit.factor];
  const value = level === undefined ? null : (unit?.replicates[level] ?? null);
  const reason = say('the trial has no factor, or several with replicates of their own');
  return { value, reason, unit: '', digits: 0, anchor: 'said' };
};

const yields = {
  yield: { key: 'kg_per_m2', unit: 'kg/m2', digits: 1 },
  yield_per_day: { key: 'g_per_m2_day', unit: 'g/m2/day', digits: 0 },
  days_from_sowing: { key: 'days_from_sowing', unit: '', digits: 0 },
  days_from_transplanting: { key: 'days_from_transplanting', unit: '', digits: 0 },
  plants: { key: 'plants', unit: '', digits: 0 },
  pots: { key: 'pots', unit: '', digits: 0 },
  containers: { key: 'containers', unit: '', digits: 0 },
} as const;

/** What a description gives beside its summaries: yield by area, days, and what the treatment consisted of. */
export function ofDescription(name: keyof typeof yields): FindQuantity {
  const { key, unit, digits } = yields[name];
  return (asked, found) => {
    const given = askedCut(asked, found.findings);
    const treatment = given && askedTreatment(asked, found, given.descriptions);
    if (given === null || treatment === null) return null;
    const { description, row } = treatment;
    const ofArea = name === 'yield' || name === 'yield_per_day';
    return {
      value: description[key],
      reason: description.reason ?? reasonFor(name, found.trial),
      unit,
      digits: Number(asked.attribute('digits') ?? digits),
      anchor: ofArea ? workingId(given.cut, row, 'area') : 'treatments',
    };
  };
}

function reasonFor(name: keyof typeof yields, trial: Trial): string {
  if (name === 'yield' || name === 'yield_per_day') {
    const lacks = trial.metadata.containers.some(({ cover }) => cover === undefined);
    return lacks
      ? say('trial.yaml gives no cover, the area that it is reckoned on')
      : say('the dates that it needs are not given');
  }
  return say('trial.yaml does not give the dates that it needs');
}
