import type { Problem } from '../model/problem.ts';

/** Rules that say of one cell, row or position in their own ways that it is not what it should be; the first says most. */
interface Rivals {
  file: RegExp;
  rules: readonly string[];
  of: (problem: Problem) => string;
}

const cellOf = ({ file, line, column }: Problem): string => `${file}:${String(line)}:${String(column)}`;
const lineOf = ({ file, line }: Problem): string => `${file}:${String(line)}`;

const rivals: readonly Rivals[] = [
  {
    file: /(^|\/)harvest\.csv$/,
    rules: ['container-total', 'unit-mixed-up', 'outside-the-range', 'unlikely-spread', 'off-the-scale'],
    of: cellOf,
  },
  {
    file: /(^|\/)harvest\.csv$/,
    rules: ['weight-beside-status', 'no-regrowth-at-first-cut', 'status-against-time'],
    of: lineOf,
  },
  {
    file: /(^|\/)readings\.csv$/,
    rules: ['reading-unlikely', 'reading-apart', 'ec-against-recipe', 'level-rise'],
    of: cellOf,
  },
  {
    file: /(^|\/)layout\.csv$/,
    rules: ['not-a-whole-number', 'too-many-plants', 'plants-per-pot'],
    of: cellOf,
  },
  {
    file: /(^|\/)layout\.csv$/,
    rules: ['formula-in-text', 'spreadsheet-error', 'plot-in-two'],
    of: cellOf,
  },
  {
    file: /(^|\/)(harvest|layout)\.csv$/,
    rules: ['position-not-planted', 'position-left-out'],
    of: ({ where }) => where ?? '',
  },
];

/**
 * The problems, what several rules find odd told by the one that says most of it.
 *
 * @param isHeeded true for a rule of which single problems are accepted, so that they have to stand
 */
export function oneCellOnce(problems: readonly Problem[], isHeeded: (rule: string) => boolean): Problem[] {
  let kept = [...problems];
  for (const { file, rules, of } of rivals) {
    const rankOf = (problem: Problem): number =>
      file.test(problem.file) && of(problem) !== '' ? rules.indexOf(problem.rule) : -1;
    const best = new Map<string, number>();
    for (const problem of kept) {
      const rank = rankOf(problem);
      if (rank !== -1 && rank < (best.get(of(problem)) ?? Infinity)) best.set(of(problem), rank);
    }
    kept = kept.filter((problem) => {
      const rank = rankOf(problem);
      return rank === -1 || rank === best.get(of(problem)) || isHeeded(problem.rule);
    });
  }
  return kept;
}
