import type { Excerpt } from '../../check/excerpt.ts';
import type { Words } from '../../compute/words/words.ts';
import type { Findings } from '../../model/findings.ts';
import type { Problem } from '../../model/problem.ts';
import type { Trial } from '../../model/trial.ts';

/** A problem with the line it speaks of, and what its rule means. */
export interface ShownProblem {
  problem: Problem;
  excerpt: Excerpt | null;
  title: string;
  meaning: string;
}

/** The problems of one file, the first of them to be shown. */
export interface FileProblems {
  /** As problems name it. */
  file: string;
  /** All there are, as "2 errors, 1 warning, 0 notes". */
  count: string;
  /** How many are not shown. */
  more: number;
  shown: readonly ShownProblem[];
}

/** What would be published of a trial without an error. */
export interface TrialOutcome {
  id: string;
  title: string;
  status: Trial['metadata']['status'];
  /** Plants, or pots weighed whole; null until the trial is finished. */
  counts: Findings['counts'] | null;
  /** Its finding, and what that rests on; null where there is none. */
  finding: Words | null;
  restsOn: Words | null;
  /** Warnings and accepted problems, published as open queries. */
  queries: number;
}

/** What the check of some files came to, as a page shows it. */
export interface Outcome {
  kind: 'trial' | 'trials' | 'content';
  /** The trial folders, good or not. */
  names: readonly string[];
  /** All problems, sorted as the command prints them. */
  problems: readonly Problem[];
  files: readonly FileProblems[];
  trials: readonly TrialOutcome[];
}

/** A trial without an error, with what its weights support. */
export interface GivenTrialWithFindings {
  trial: Trial;
  findings: Findings | null;
}
