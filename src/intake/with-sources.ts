import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { cellInWords } from './intake-problem.ts';
import type { TakenRow } from './take-rows.ts';

/** Problems of harvest.csv with the cell of the spreadsheet that each row came from. */
export function withSources(problems: readonly Problem[], rows: readonly TakenRow[]): Problem[] {
  return problems.map((problem) => {
    // The first line of harvest.csv is its headings, and each row is one line.
    const row =
      problem.file.endsWith('harvest.csv') && problem.line !== null ? rows[problem.line - 2] : undefined;
    if (row === undefined) return problem;
    const cell = cellInWords({ file: '', ...row.from });
    return { ...problem, message: say('{message} (from {cell})', { message: problem.message, cell }) };
  });
}
