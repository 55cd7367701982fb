import type { Problem, Severity } from '../model/problem.ts';
import { sayCount } from '../model/say.ts';
import { escapeUnseen } from './show-value.ts';

/** One line: path with line and column, severity, rule, message, two spaces between. */
export function printProblem(problem: Problem): string {
  const { line, column } = problem;
  const place =
    line === null ? '' : column === null ? `:${String(line)}` : `:${String(line)}:${String(column)}`;
  const parts = [`${problem.file}${place}`, problem.severity, problem.rule, problem.message];
  return parts.map(escapeUnseen).join('  ');
}

/** The closing count: `2 errors, 1 warning, 0 notes`. */
export function printCount(problems: readonly Problem[]): string {
  const count = (severity: Severity): number => problems.filter((one) => one.severity === severity).length;
  return [
    sayCount(count('error'), '{count} error', '{count} errors'),
    sayCount(count('warning'), '{count} warning', '{count} warnings'),
    sayCount(count('note'), '{count} note', '{count} notes'),
  ].join(', ');
}

/** What the command prints and the page lets one keep: one line a problem, then a count. */
export function printReport(problems: readonly Problem[]): string {
  return [...problems.map(printProblem), printCount(problems)].map((line) => `${line}\n`).join('');
}

/** The same for machines. */
export function printJson(problems: readonly Problem[]): string {
  return `${JSON.stringify(problems, null, 2)}\n`;
}

const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** By file, line, column and rule; a fault without a line stands before those with one. */
export function compareProblems(a: Problem, b: Problem): number {
  return (
    compareText(a.file, b.file) ||
    (a.line ?? 0) - (b.line ?? 0) ||
    (a.column ?? 0) - (b.column ?? 0) ||
    compareText(a.rule, b.rule) ||
    compareText(a.message, b.message)
  );
}
