import type { Seasons } from '../../model/generated/seasons.ts';
import type { TrialWithFindings } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import { cultivarFactor } from '../cultivar-identity.ts';

/** The trials of a crop that take no part in a comparison, and why, a sentence each. */
export function leftOut(trials: readonly TrialWithFindings[], entry: Seasons): string[] {
  const part = new Set(entry.trials.map(({ id }) => id));
  return trials
    .filter(({ trial }) => !part.has(trial.id))
    .map(({ trial, findings }) => {
      const { metadata } = trial;
      const from = trial.origin === undefined ? '' : ` (${trial.origin.title})`;
      const title = `“${metadata.title}”${from}`;
      if (findings === null)
        return say('{title} takes no part: it is {status}.', { title, status: say(metadata.status) });
      if (metadata.variables[0].kind === 'scored')
        return say('{title} takes no part: its scores are ranks, which have no mean.', { title });
      if (!cultivarFactor(trial) && metadata.crop.cultivar === undefined)
        return say('{title} takes no part: it names no cultivar.', { title });
      if (findings.variable.unit !== entry.unit && entry.measure !== 'kg_per_m2')
        return say('{title} takes no part: it was measured in another unit.', { title });
      const measure =
        entry.measure === 'kg_per_m2' ? say('by area') : say(entry.measure.replaceAll('_', ' '));
      return say('{title} takes no part: it has no mean {measure} of every treatment.', { title, measure });
    });
}
