import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'ragged-row',
  severity: 'error',
  acceptable: false,
  title: 'Too few or too many cells',
  meaning:
    'A row with another number of cells than there are headings has slipped: an extra comma, or one missing.',
  example: 'the row has 5 cells, but there are 4 headings; look for a comma too many',
};
export default rule;

export function reportRaggedRow(
  report: Report,
  file: string,
  line: number,
  cells: number,
  headings: number,
): void {
  const advice =
    cells > headings
      ? 'look for a separator too many, or put a text that holds one in double quotes'
      : 'look for a separator too few';
  const found = `${String(cells)} cell${cells === 1 ? '' : 's'}`;
  report(rule, {
    file,
    place: { line, column: 1 },
    found,
    expected: `${String(headings)} cells`,
    message: `the row has ${found}, but there are ${String(headings)} headings; ${advice}`,
  });
}
