import { say, sayCount } from '../../model/say.ts';
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

/** A row with another number of cells than there are headings. */
interface Ragged {
  line: number;
  cells: readonly string[];
}

/**
 * Reports rows with another number of cells than there are headings: each on its own, or (where all rows are alike in
 * it, so that it is the headings that slipped) once, and not at all where the headings were found unsound already.
 */
export function raggedRows(
  report: Report,
  file: string,
  headings: () => readonly string[],
): { take: (row: Ragged, isRagged: boolean) => void; end: (areHeadingsSound: boolean) => void } {
  // Held back while every row so far has the same number of cells too many or too few; null once one differs.
  let alike: Ragged[] | null = [];
  return {
    take: ({ line, cells }, isRagged) => {
      if (alike !== null && isRagged && (alike[0]?.cells.length ?? cells.length) === cells.length) {
        alike.push({ line, cells: [...cells] });
        return;
      }
      for (const row of alike ?? []) reportRow(report, file, row, headings());
      alike = null;
      if (isRagged) reportRow(report, file, { line, cells }, headings());
    },
    end: (areHeadingsSound) => {
      const [first, ...others] = alike ?? [];
      if (first === undefined || (others.length > 0 && !areHeadingsSound)) return;
      reportRow(report, file, first, headings(), others.length);
    },
  };
}

/** @param others how many rows have the same fault */
function reportRow(
  report: Report,
  file: string,
  { line, cells }: Ragged,
  headings: readonly string[],
  others = 0,
): void {
  const found = sayCount(cells.length, '{count} cell', '{count} cells');
  const split = splitNumber(cells, headings);
  const isMore = cells.length > headings.length;
  const advice =
    split !== null
      ? /,\d{3}$/.test(split)
        ? say(
            'a comma splits "{number}" in two: write {corrected}, or {whole} where it stands between thousands',
            { number: split, corrected: split.replace(',', '.'), whole: split.replace(',', '') },
          )
        : say('a decimal comma splits "{number}" in two: write {corrected}', {
            number: split,
            corrected: split.replace(',', '.'),
          })
      : others > 0
        ? say(isMore ? 'look for a heading too few' : 'look for a heading too many')
        : isMore
          ? say('look for a separator too many, or put a text that holds one in double quotes')
          : say('look for a separator too few');
  const has =
    others > 0
      ? sayCount(
          cells.length,
          'this row and all others ({others}) have {count} cell',
          'this row and all others ({others}) have {count} cells',
          { others },
        )
      : sayCount(cells.length, 'the row has {count} cell', 'the row has {count} cells');
  const message = sayCount(
    headings.length,
    '{has}, but there is {count} heading; {advice}',
    '{has}, but there are {count} headings; {advice}',
    { has, advice },
  );
  report(rule, {
    file,
    place: { line, column: 1 },
    found,
    expected: sayCount(headings.length, '{count} cell', '{count} cells'),
    message,
  });
}

/** Columns whose digits are counts, so that two of them side by side are no number split in two. */
const counts = new Set(['container', 'row', 'column', 'cut', 'plant', 'plants']);

/** The number that a decimal comma split into one cell too many, or null. */
function splitNumber(row: readonly string[], headings: readonly string[]): string | null {
  // A row with one cell too many in front has slipped as a whole.
  if (row.length <= headings.length || row[0] === '') return null;
  const at = row.findIndex(
    (cell, index) =>
      !counts.has(headings[index] ?? '') && /^\d+$/.test(cell) && /^\d+$/.test(row[index + 1] ?? ''),
  );
  return at === -1 ? null : `${row[at] ?? ''},${row[at + 1] ?? ''}`;
}
