import type { Findings } from '../model/findings.ts';
import type { Trial, TrialMetadata } from '../model/trial.ts';
import { computeFindings } from './findings.ts';
import { nextTrial, ownVariation } from './next-trial.ts';

/** A trial beside its findings; null until it is finished. */
interface TrialAndFindings {
  trial: Trial;
  findings: Findings | null;
}

/**
 * The findings of a site's trials, one for each and in their order. A trial without an error of its own
 * reckons its next trial from the median error of the site's other trials of the crop.
 *
 * @param done told after each trial how many are done
 * @param computed what has been computed already of a trial alone
 */
export function siteFindings(
  trials: readonly Trial[],
  done: (count: number) => void = () => undefined,
  computed: (trial: Trial) => Findings | undefined = () => undefined,
): TrialAndFindings[] {
  const alone = trials.map((trial, index): TrialAndFindings => {
    const finished = trial.metadata.status === 'finished';
    const findings = finished ? (computed(trial) ?? computeFindings(trial)) : null;
    done(index + 1);
    return { trial, findings };
  });
  const variations = alone.map(({ trial, findings }) =>
    findings ? ownVariation(trial, findings.inference) : null,
  );
  return alone.map(({ trial, findings }, index) => {
    if (findings === null || variations[index] !== null) return { trial, findings };
    const others = alone.flatMap((other, at) => {
      const variation = variations[at] ?? null;
      return variation !== null && sameCrop(other.trial, trial) ? [variation] : [];
    });
    return { trial, findings: { ...findings, next_trial: nextTrial(trial, findings.inference, others) } };
  });
}

/** What is asked of a trial to tell its crop. */
interface OfCrop {
  metadata: Pick<TrialMetadata, 'crop'>;
}

/** Whether two trials grew the same species, or the same crop where no species is given. */
export function sameCrop(a: OfCrop, b: OfCrop): boolean {
  const of = ({ metadata }: OfCrop) => (metadata.crop.species ?? metadata.crop.name).toLowerCase();
  return of(a) === of(b);
}
