import type { Cultivar } from './generated/cultivars.ts';
import type { FactSheet } from './fact-sheet.ts';
import type { Findings } from './generated/findings.ts';
import type { SiteSettings } from './generated/site.ts';
import type { Problem } from './problem.ts';
import type { Trial } from './trial.ts';

export type { Cultivar } from './generated/cultivars.ts';
export type { SiteSettings } from './generated/site.ts';

/** A trial beside what was found in it; findings are null until the trial is finished. */
export interface TrialWithFindings {
  trial: Trial;
  findings: Findings | null;
}

/** Everything that the pages are made from. */
export interface Library {
  site: SiteSettings;
  cultivars: readonly Cultivar[];
  /** Newest first. */
  trials: readonly TrialWithFindings[];
  /** Those across trials, in the order of their files' names; absent where there are none. */
  factSheets?: readonly FactSheet[];
  /** Trials of other sites, newest first: they take part in comparisons and lists, and are not published again. */
  gathered?: readonly TrialWithFindings[];
  /** All problems of all files, sorted by file and line; shown by the development server. */
  problems: readonly Problem[];
}
