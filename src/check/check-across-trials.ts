import type { Cultivar } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import type { Trial } from '../model/trial.ts';
import { collector } from './collect.ts';
import { compareProblems } from './print-problem.ts';
import { reportCultivarNamedDifferently } from './rules/cultivar-named-differently.ts';
import { reportSameTitleAndSeason } from './rules/same-title-and-season.ts';
import { trialText } from './trial-text.ts';

/** The trials with what was found as queries of theirs, and all of it sorted by file and line. */
export interface CheckedAcross {
  trials: Trial[];
  problems: Problem[];
}

/** What can be seen only in all trials together, such as one cultivar under two names: warnings, each a query of its trial. */
export function checkAcrossTrials(
  trials: readonly Trial[],
  cultivars: readonly Cultivar[],
  prefix = 'trials/',
): CheckedAcross {
  const { report, problems } = collector('');
  const inOrder = [...trials].sort((a, b) => (a.id < b.id ? -1 : 1)).map((trial) => trialText(trial, prefix));
  reportSameTitleAndSeason(inOrder, report);
  reportCultivarNamedDifferently(inOrder, cultivars, report);
  problems.sort(compareProblems);
  const withQueries = trials.map((trial) => {
    const own = problems.filter(({ file }) => file.startsWith(`${prefix}${trial.id}/`));
    const queries = own.map((problem) => ({ problem, reason: null }));
    return own.length === 0 ? trial : { ...trial, queries: [...trial.queries, ...queries] };
  });
  return { trials: withQueries, problems };
}
