/** Checks files beside the page, so that the page stays alive meanwhile: the command line's own check. */
import { checkTaken } from '../../check/check-taken.ts';
import { siteFindings } from '../../compute/site-findings.ts';
import type { Cultivar } from '../../model/library.ts';
import { takeIn } from '../../read/take-in.ts';
import type { GivenTrialWithFindings, Outcome } from './outcome.ts';
import { outcomeOf } from './outcome-of.ts';
import { withSheets } from './with-sheets.ts';

/** What a page asks for. */
export interface CheckRequest {
  files: readonly { path: string; file: File }[];
  /** Year-month-day. */
  today: string;
  /** Cultivars to hold names against where no cultivars.yaml is among the files; null for none. */
  cultivars: readonly Cultivar[] | null;
  /** True where the trials themselves are wanted too. */
  withTrials: boolean;
}

/** The answer: what was found, or that the check itself failed. */
export type CheckAnswer = { outcome: Outcome; trials: readonly GivenTrialWithFindings[] } | { fault: string };

self.addEventListener('message', ({ data }: MessageEvent<CheckRequest>) => {
  answer(data).then(
    (found) => self.postMessage(found),
    (error: unknown) => self.postMessage({ fault: String(error) } satisfies CheckAnswer),
  );
});

async function answer({ files, today, cultivars, withTrials }: CheckRequest): Promise<CheckAnswer> {
  const given = files.map(({ path, file }) => ({
    path,
    size: file.size,
    arrayBuffer: () => file.arrayBuffer(),
  }));
  const taken = checkTaken(await takeIn(given), today, cultivars);
  const trials = siteFindings(taken.trials);
  const checked = withSheets(taken, trials);
  return { outcome: outcomeOf(checked, trials), trials: withTrials ? trials : [] };
}
