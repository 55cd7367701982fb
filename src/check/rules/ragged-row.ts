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
  row: readonly string[],
  headings: readonly string[],
): void {
  const cells = row.length;
  const split = splitNumber(row, headings);
  const advice =
    split !== null
      ? `a decimal comma splits "${split}" in two: write ${split.replace(',', '.')}`
      : cells > headings.length
        ? 'look for a separator too many, or put a text that holds one in double quotes'
        : 'look for a separator too few';
  const found = `${String(cells)} cell${cells === 1 ? '' : 's'}`;
  report(rule, {
    file,
    place: { line, column: 1 },
    found,
    expected: `${String(headings.length)} cells`,
    message: `the row has ${found}, but there ${headings.length === 1 ? 'is 1 heading' : `are ${String(headings.length)} headings`}; ${advice}`,
  });
}

/** Columns whose digits are counts, so that two of them side by side are no number split in two. */
const counts = new Set(['container', 'row', 'column', 'cut', 'plant', 'plants']);

/** The number that a decimal comma split into one cell too many, or null. */
function splitNumber(row: readonly string[], headings: readonly string[]): string | null {
  if (row.length <= headings.length) return null;
  const at = row.findIndex(
    (cell, index) =>
      !counts.has(headings[index] ?? '') && /^\d+$/.test(cell) && /^\d+$/.test(row[index + 1] ?? ''),
  );
  return at === -1 ? null : `${row[at] ?? ''},${row[at + 1] ?? ''}`;
}
