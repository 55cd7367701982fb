import type { Seasons } from '../../model/generated/seasons.ts';
import type { TrialWithFindings } from '../../model/library.ts';
import { cultivarFactor } from '../cultivar-identity.ts';

/** The trials of a crop that take no part in a comparison, and why, a sentence each. */
export function leftOut(trials: readonly TrialWithFindings[], entry: Seasons): string[] {
  const part = new Set(entry.trials.map(({ id }) => id));
  return trials
    .filter(({ trial }) => !part.has(trial.id))
    .map(({ trial, findings }) => {
      const { metadata } = trial;
      const from = trial.origin === undefined ? '' : ` (${trial.origin.title})`;
      const is = `“${metadata.title}”${from} takes no part: `;
      if (findings === null) return `${is}it is ${metadata.status}.`;
      if (metadata.variables[0].kind === 'scored') return `${is}its scores are ranks, which have no mean.`;
      if (!cultivarFactor(trial) && metadata.crop.cultivar === undefined) return `${is}it names no cultivar.`;
      if (findings.variable.unit !== entry.unit && entry.measure !== 'kg_per_m2') {
        return `${is}it was measured in another unit.`;
      }
      return `${is}it has no mean ${entry.measure === 'kg_per_m2' ? 'by area' : entry.measure.replaceAll('_', ' ')} of every treatment.`;
    });
}
