import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { compareProblems } from './print-problem.ts';

/** From this many on, faults that are told in the same words are told once. */
const several = 3;
/** So many runs of lines are named; of more, the last line alone. */
const runsNamed = 12;

/**
 * Rules of which the same words in row after row mean one slip, mended at one go: a container renamed, a level
 * misspelt, a date typed by day and month. A missing weight is another slip in every row.
 */
const oneSlip = new Set([
  'layout-and-container-differ',
  'not-a-whole-number',
  'unknown-container',
  'unknown-cut',
  'unknown-level',
  'unknown-status',
  'wrong-date-in-row',
]);

/** Of a fact sheet, where the same words are typed, or the same link is set, again and again. */
const oneSlipOfSheet = new Set([
  'sheet-claimed-difference',
  'sheet-claimed-sameness',
  'sheet-link',
  'sheet-typed-number',
  'sheet-unknown-name',
]);

/** The problems, one slip in many rows told once: at the first of them, with the lines of the others. */
export function joinAlike(problems: readonly Problem[]): Problem[] {
  const kept: Problem[] = [];
  for (const [key, group] of Map.groupBy(problems, keyOf)) {
    if (key !== '' && group.length >= several) kept.push(joined(group.toSorted(compareProblems)));
    else for (const problem of group) kept.push(problem);
  }
  return kept;
}

function joined([first, ...others]: readonly Problem[]): Problem {
  const { message, line: own } = first!;
  const lines = others.map(({ line }) => line ?? 0).filter((line) => line !== own);
  if (lines.length === 0) {
    const again = say('{message} (also {count} more times in this line)', { message, count: others.length });
    return { ...first!, message: again, where: null };
  }
  const runs = runsOf(lines);
  const told =
    runs.length <= runsNamed
      ? say('{message} (also in lines {lines})', { message, lines: runs.join(', ') })
      : say('{message} (also in {count} more lines, the last of them {line})', {
          message,
          count: new Set(lines).size,
          line: lines.at(-1)!,
        });
  return { ...first!, message: told, where: null };
}

/** Line numbers as runs, `3-10` for those that follow each other. */
function runsOf(lines: readonly number[]): string[] {
  const runs: [first: number, last: number][] = [];
  for (const line of lines) {
    const run = runs.at(-1);
    if (run !== undefined && line - run[1] <= 1) run[1] = line;
    else runs.push([line, line]);
  }
  return runs.map(([first, last]) => (first === last ? String(first) : `${String(first)}-${String(last)}`));
}

/** Empty where a problem stands on its own. */
function keyOf({ rule, file, line, message }: Problem): string {
  const isOneSlip = file.endsWith('.csv') ? oneSlip.has(rule) : oneSlipOfSheet.has(rule);
  return line !== null && isOneSlip ? JSON.stringify([rule, file, message]) : '';
}
