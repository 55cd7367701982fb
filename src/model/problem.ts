/** How grave a problem is: an error keeps the trial from being published, a warning shows as a query. */
export type Severity = 'error' | 'warning' | 'note';

/** One fault, as a value. All faults of all trials are reported in one run. */
export interface Problem {
  /** The rule that found it, such as `weight-not-a-number`. */
  rule: string;
  severity: Severity;
  /** Path of the file relative to the content folder, with `/` between its parts. */
  file: string;
  /** Physical line from 1, or null where the fault belongs to no line. */
  line: number | null;
  /** Character column from 1, or null. */
  column: number | null;
  /** What stands there, or null. */
  found: string | null;
  /** What should stand there instead, or null. */
  expected: string | null;
  /** One sentence that holds what was found and what to write. */
  message: string;
  /** More help, or null. */
  hint: string | null;
  /**
   * What in the trial it concerns, in the words that `accepted.where` uses: a container, or container,
   * row and column (`T2`, `T2 1 3`); null where it concerns the whole trial.
   */
  where: string | null;
}

/** True where any of the problems keeps a trial from being published. */
export function hasError(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'error');
}
