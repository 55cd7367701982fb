import type { Problem } from '../model/problem.ts';
import type { Report } from './rule.ts';

/** A report that keeps what it hears as problems, with the file's path completed by a prefix. */
export function collector(prefix: string): { report: Report; problems: Problem[] } {
  const problems: Problem[] = [];
  const report: Report = ({ rule, severity }, finding) => {
    problems.push({
      rule,
      severity,
      file: prefix + finding.file,
      line: finding.place?.line ?? null,
      column: finding.place?.column ?? null,
      found: finding.found ?? null,
      expected: finding.expected ?? null,
      message: finding.message,
      hint: finding.hint ?? null,
      where: finding.where ?? null,
    });
  };
  return { report, problems };
}
