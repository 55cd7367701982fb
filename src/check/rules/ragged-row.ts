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
 * Lines that a line break within a cell tore off the one before are told with it.
 */
export function raggedRows(
  report: Report,
  file: string,
  headings: () => readonly string[],
): { take: (row: Ragged, isRagged: boolean) => void; end: (areHeadingsSound: boolean) => void } {
  const ragged: Ragged[] = [];
  /** What sound rows begin with: a line that begins so is a row of its own. */
  const beginnings = new Set<string>();
  let latest: string | null = null;
  return {
    take: ({ line, cells }, isRagged) => {
      if (isRagged) ragged.push({ line, cells: [...cells] });
      else if (cells[0] !== latest) beginnings.add((latest = cells[0] ?? ''));
    },
    end: (areHeadingsSound) => {
      const [first, ...others] = ragged;
      const areAll = beginnings.size === 0 && others.every((row) => row.cells.length === first?.cells.length);
      if (first === undefined) return;
      if (areAll && others.length > 0 && !areHeadingsSound) return;
      if (areAll) {
        reportRow(report, file, first, headings(), others.length);
        return;
      }
      for (let at = 0; at < ragged.length;) {
        const torn = linesOfOneRow(ragged.slice(at, at + mostTorn), headings().length, beginnings);
        if (torn === 1) reportRow(report, file, ragged[at]!, headings());
        else reportTorn(report, file, ragged[at]!, ragged[at + torn - 1]!.line);
        at += torn;
      }
    },
  };
}

/** Into no more lines than these is a row taken to be torn. */
const mostTorn = 5;

/** How many of the rows, which follow each other, make one row once the cells that line breaks tore are whole again. */
function linesOfOneRow(rows: readonly Ragged[], width: number, beginnings: ReadonlySet<string>): number {
  let cells = rows[0]?.cells.length ?? 0;
  for (let at = 1; at < rows.length; at += 1) {
    const { line, cells: more } = rows[at]!;
    const isOwnRow = beginnings.has(more[0] ?? '') || more[0] === rows[0]?.cells[0];
    if (isOwnRow || line !== rows[at - 1]!.line + 1) return 1;
    cells += more.length - 1;
    if (cells >= width) return cells === width ? at + 1 : 1;
  }
  return 1;
}

function reportTorn(report: Report, file: string, { line, cells }: Ragged, last: number): void {
  const message = say(
    'lines {first} to {last} hold the cells of one row: a line break stands within a cell; join them, or put the text of the cell in double quotes',
    { first: line, last },
  );
  const found = sayCount(cells.length, '{count} cell', '{count} cells');
  report(rule, { file, place: { line, column: 1 }, found, message });
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
        : isQuoteAfterSpace(cells)
          ? say(
              'delete the space before the double quote: only right behind the separator does it open a text',
            )
          : isMore
            ? say('look for a separator too many, or put a text that holds one in double quotes')
            : cells.length === 1
              ? say(
                  'join it to the line before, the text in double quotes, where a line break tore it off; else delete it',
                )
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

/** True where a text in quotes was split at the separators in it, because a space stands before its first quote. */
function isQuoteAfterSpace(cells: readonly string[]): boolean {
  const opens = cells.findIndex((cell) => /^\s+"[^"]*$/.test(cell));
  return opens !== -1 && cells.some((cell, index) => index > opens && /^[^"]*"\s*$/.test(cell));
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
