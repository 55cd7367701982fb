import type { CheckedTaken } from '../../check/check-taken.ts';
import { compareProblems } from '../../check/print-problem.ts';
import { checkSheets } from '../../sheets/check-sheets.ts';
import type { GivenTrialWithFindings } from './outcome.ts';

/** No page is made here, so that what the site would be called does not matter. */
const site = { title: 'Checked', url: 'http://localhost/', publisher: 'Unknown', licence: 'CC0-1.0' };

/** What was checked, with its fact sheets held against the findings too, where it has any. */
export function withSheets(checked: CheckedTaken, trials: readonly GivenTrialWithFindings[]): CheckedTaken {
  const { cultivars, factSheets, problems, names, kind } = checked;
  if (factSheets.length === 0 && trials.every(({ trial }) => trial.factSheets === undefined)) return checked;
  const faulty = new Set(names.filter((name) => !trials.some(({ trial }) => trial.id === name)));
  const library = { site, cultivars, trials, factSheets, problems };
  const ofSheets = checkSheets(library, { faulty, alone: kind === 'trial' });
  return { ...checked, problems: [...problems, ...ofSheets].sort(compareProblems) };
}
