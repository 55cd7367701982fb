import type { Severity } from '../model/problem.ts';
import type { Place } from '../read/place.ts';
import type { Facts } from './facts.ts';

/** A rule: its words for the page of checks, and (where it looks at the whole trial) its check. */
export interface Rule {
  /** Its name, as printed. */
  rule: string;
  severity: Severity;
  title: string;
  /** What it means and why it matters, for a grower. */
  meaning: string;
  /** A fault that it finds, and what to write instead. */
  example: string;
  /** True where the trial's numbers can still be computed, so that `accepted` may let it stand. */
  acceptable: boolean;
  check?: (facts: Facts, report: Report) => void;
}

/** What a rule says of one fault. */
export interface Finding {
  /** The file, from the trial's folder on. */
  file: string;
  place?: Place | null;
  found?: string | null;
  expected?: string | null;
  message: string;
  hint?: string | null;
  /** A container, or container, row and column; null where it concerns the whole trial. */
  where?: string | null;
}

export type Report = (rule: Rule, finding: Finding) => void;
