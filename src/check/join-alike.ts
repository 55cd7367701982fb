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
  'date-in-the-future',
  'date-outside-the-trial',
  'layout-and-container-differ',
  'not-a-whole-number',
  'position-off-the-grid',
  'unknown-container',
  'unknown-cut',
  'unknown-level',
  'unknown-status',
  'wrong-date-in-row',
]);

/**
 * Rules that tell a slip of a whole column in every one of its rows, each with a value of its own: units typed behind the
 * numbers, a decimal comma, a year mistaken. The share of a table's rows that must have it before it is told as one.
 */
const oneSlipOfColumn: Readonly<Record<string, number>> = {
  'blank-cell': 0.5,
  'count-not-whole': 0.25,
  'date-far-from-cut': 0.5,
  'date-in-the-future': 0.25,
  'date-outside-the-trial': 0.25,
  'level-rise': 0.25,
  'mark-off-its-scale': 0.25,
  'no-weight-no-status': 0.5,
  'not-a-whole-number': 0.25,
  'plant-beyond-set': 0.25,
  'plant-twice': 0.5,
  'plants-per-pot': 0.25,
  'plot-not-one': 0.5,
  'position-not-planted': 0.25,
  'position-off-the-grid': 0.25,
  'position-twice': 0.5,
  'ragged-row': 0.25,
  'reading-twice': 0.5,
  'unknown-container': 0.5,
  'unknown-level': 0.5,
  'unknown-status': 0.25,
  'value-not-a-number': 0.25,
  'weight-beside-status': 0.5,
  'weight-not-a-number': 0.25,
  'wrong-date-in-row': 0.25,
};

/** Of a fact sheet, where the same words are typed, or the same link is set, again and again. */
const oneSlipOfSheet = new Set([
  'sheet-claimed-difference',
  'sheet-claimed-sameness',
  'sheet-link',
  'sheet-typed-number',
  'sheet-unknown-name',
]);

/**
 * The problems, one slip in many rows told once: at the first of them, with the lines of the others.
 *
 * @param rowsOf how many rows the table of a path has
 * @param isHeeded true for a rule of which single problems are accepted, so that they have to stand apart
 */
export function joinAlike(
  problems: readonly Problem[],
  rowsOf: (file: string) => number = () => Infinity,
  isHeeded: (rule: string) => boolean = () => false,
): Problem[] {
  const ofColumns = joinGroups(
    problems,
    (problem) => (isHeeded(problem.rule) ? '' : columnKeyOf(problem)),
    ({ rule, file }) => rowsOf(file) * (oneSlipOfColumn[rule] ?? Infinity),
  );
  const ofHeadings = joinGroups(ofColumns, headingKeyOf, () => several);
  return acrossFiles(
    joinGroups(ofHeadings, keyOf, () => several),
    problems,
  );
}

/** A container that rows of several files name and trial.yaml does not was renamed there: told in the first of them. */
function acrossFiles(told: readonly Problem[], all: readonly Problem[]): Problem[] {
  const unknown = (problem: Problem): string =>
    problem.rule === 'unknown-container' && problem.found !== null
      ? JSON.stringify([problem.file, problem.found])
      : '';
  const counts = Map.groupBy(all, unknown);
  const often = told.filter(
    (problem) => unknown(problem) !== '' && (counts.get(unknown(problem))?.length ?? 0) >= several,
  );
  const byFound = Map.groupBy(often.toSorted(compareProblems), ({ found }) => found);
  const first = new Set([...byFound.values()].map((group) => group[0]!));
  const again = new Set([...byFound.values()].flatMap((group) => group.slice(1)));
  return told
    .filter((problem) => !again.has(problem))
    .map((problem) => {
      const others = first.has(problem) ? (byFound.get(problem.found) ?? []).slice(1) : [];
      if (others.length === 0) return problem;
      const values = {
        message: problem.message,
        files: others.map(({ file }) => file.split('/').at(-1)).join(', '),
      };
      return { ...problem, message: say('{message} (and in {files})', values) };
    });
}

function joinGroups(
  problems: readonly Problem[],
  key: (problem: Problem) => string,
  least: (problem: Problem) => number,
): Problem[] {
  const kept: Problem[] = [];
  for (const [of, group] of Map.groupBy(problems, key)) {
    if (of !== '' && group.length >= several && group.length >= least(group[0]!))
      kept.push(joined(group.toSorted(compareProblems)));
    else for (const problem of group) kept.push(problem);
  }
  return kept;
}

/** The same for problems told in the same words but for their values: what stands in quotes, numbers, the place. */
function columnKeyOf({ rule, file, line, message, where }: Problem): string {
  if (line === null || !file.endsWith('.csv') || !Object.hasOwn(oneSlipOfColumn, rule)) return '';
  const container = where?.split(' ')[0] ?? '';
  const placeless = container === '' ? message : message.replaceAll(container, '#');
  // What a hint adds at the end of a message may differ from row to row.
  const words = placeless.replaceAll(/"[^"]*"/g, '#').replaceAll(/[\p{L}]*[\d.,-]*\d\w*/gu, '#');
  return JSON.stringify([rule, file, words.split(/[;(]/, 1)[0]]);
}

function joined([first, ...others]: readonly Problem[]): Problem {
  const { message, line: own } = first!;
  const isSame = others.every((one) => one.message === message);
  const lines = others.map(({ line }) => line ?? 0).filter((line) => line !== own);
  if (lines.length === 0) {
    const again = say(
      isSame
        ? '{message} (also {count} more times in this line)'
        : '{message} (and likewise, with what stands there, {count} more times in this line)',
      { message, count: others.length },
    );
    return { ...first!, message: again, where: null };
  }
  const runs = runsOf(lines);
  const told =
    runs.length <= runsNamed
      ? say(
          isSame
            ? '{message} (also in lines {lines})'
            : '{message} (and likewise, with what stands there, in lines {lines})',
          { message, lines: runs.join(', ') },
        )
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

/** Headings of a table that are each a slip of a column's name: all in capitals, in quotes, with the unit behind them. */
function headingKeyOf({ rule, file, line, expected }: Problem): string {
  return rule === 'unknown-column' && expected !== null ? JSON.stringify([file, line]) : '';
}

/** Empty where a problem stands on its own. */
function keyOf({ rule, file, line, message }: Problem): string {
  const isOneSlip = file.endsWith('.csv') ? oneSlip.has(rule) : oneSlipOfSheet.has(rule);
  return line !== null && isOneSlip ? JSON.stringify([rule, file, message]) : '';
}
