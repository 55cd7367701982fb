import { say, sayCount } from '../model/say.ts';
import type { Findings } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { medianOf } from '../statistics/median.ts';
import { replicatesNeeded } from '../statistics/power/replicates-needed.ts';
import { experimentalUnit, finestUnit } from './experimental-unit.ts';
import { headlineMeasure } from './headline-measure.ts';
import { inWords } from './inference/verdict-words.ts';

/** Differences in percent of the mean, and powers, for which replicates are reckoned. */
const differences = [10, 15, 20, 25, 30];
const powers = [0.8, 0.9];
const alpha = 0.05;

type NextTrial = Findings['next_trial'];

/** The coefficient of variation between the trial's own experimental units, in percent; null where it has no error. */
export function ownVariation(trial: Trial, inference: Findings['inference']): number | null {
  const measure = headlineMeasure(trial);
  const entry = inference.find((each) => each.measure === measure && each.cut === 'all');
  return entry?.verdict === 'tested' ? entry.cv_percent : null;
}

/**
 * The trial's own error in words. Where factors have units of different size it is that of the finest, and says
 * nothing of what telling the coarser ones' levels apart would need.
 */
function ownError(trial: Trial): string {
  const varied = (trial.metadata.factors ?? [])
    .map(({ id }) => id)
    .filter((id) => new Set(trial.positions.map(({ treatment }) => treatment[id])).size > 1);
  const unit = finestUnit(trial) ?? 'position';
  const ofFinest = varied.filter((id) => experimentalUnit(trial, id) === unit);
  if (ofFinest.length === varied.length) return say("this trial's own error");
  return say("this trial's own error between {units}, which holds for {factors} alone", {
    units: say(`${unit}s`),
    factors: inWords(trial, { factors: ofFinest }),
  });
}

/**
 * Units of each treatment that a like trial needs to tell a given difference between two treatments, by the
 * noncentral t on the whole trial's error; in blocks where this trial had blocks or could have had them.
 *
 * @param others coefficients of variation between units, in percent, of the site's other trials of the crop:
 *   their median stands in where this trial has no error of its own
 */
export function nextTrial(
  trial: Trial,
  inference: Findings['inference'],
  others: readonly number[],
): NextTrial {
  const own = ownVariation(trial, inference);
  const cvPercent = own ?? (others.length === 0 ? null : medianOf(others));
  const treatments = new Set(trial.positions.map(({ treatment }) => JSON.stringify(treatment))).size;
  const from =
    own !== null
      ? ownError(trial)
      : sayCount(
          others.length,
          "the median error of the site's {count} other tested trial of {crop}",
          "the median error of the site's {count} other tested trials of {crop}",
          { crop: trial.metadata.crop.name.toLowerCase() },
        );
  if (treatments < 2) return [];
  const design =
    trial.metadata.design.arrangement === 'completely randomised'
      ? 'completely randomised'
      : 'randomised blocks';
  return differences.flatMap((difference) =>
    powers.map((power) => {
      const shared = { difference_percent: difference, power };
      if (cvPercent === null) {
        const reason = say('Neither this trial nor any other of the crop here has an error to reckon from.');
        return { ...shared, replicates_needed: null, cv_used: null, from: say('none'), reason };
      }
      const needed = replicatesNeeded(
        { differencePercent: difference, cvPercent, treatments, design, alpha, test: 't' },
        power,
      );
      return {
        ...shared,
        replicates_needed: needed.replicates,
        cv_used: cvPercent,
        from,
        ...('reason' in needed ? { reason: needed.reason } : {}),
      };
    }),
  );
}
