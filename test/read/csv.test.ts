import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { openCsv, type CsvRow } from '../../src/read/csv.ts';

function rows(text: string, delimiter = ','): CsvRow[] {
  const found: CsvRow[] = [];
  openCsv(text, delimiter).read((row) => found.push(row));
  return found;
}

describe('openCsv', () => {
  it('keeps every cell as the text that it is', () => {
    expect(rows('a,b\n007, 1 \n').map(({ cells }) => cells)).toEqual([
      ['a', 'b'],
      ['007', ' 1 '],
    ]);
  });

  it('places the cells of a row in any order, across a quoted line break and wide characters', () => {
    const csv = openCsv('é,"a\n,b",🥬,d\nx,y\n', ',');
    const found: CsvRow[] = [];
    csv.read((row) => found.push(row));
    const places = (row: CsvRow, ...cells: number[]) =>
      cells.map((cell) => `${String(csv.place(row, cell).line)}:${String(csv.place(row, cell).column)}`);
    expect(places(found[0]!, 0, 1, 2, 3)).toEqual(['1:1', '1:3', '2:5', '2:7']);
    expect(places(found[0]!, 3, 1, 2, 0, 9)).toEqual(['2:7', '1:3', '2:5', '1:1', '2:7']);
    expect(places(found[1]!, 1, 0, 5)).toEqual(['3:3', '3:1', '3:3']);
    expect(places(found[0]!, 2)).toEqual(['2:5']);
  });

  it('places each cell of a very wide row in little time', () => {
    const width = 200_000;
    const csv = openCsv(`${'x,'.repeat(width)}y\n`, ',');
    csv.read((row) => {
      const columns = row.cells.map((_, cell) => csv.place(row, cell).column);
      expect(columns.at(-1)).toBe(2 * width + 1);
    });
  }, 10_000);

  it.each([
    ['LF', 'a\n\nb\nc\n'],
    ['CRLF', 'a\r\n\r\nb\r\nc\r\n'],
    ['CR', 'a\r\rb\rc\r'],
    ['mixed', 'a\r\n\nb\rc'],
  ])('counts physical lines past blank ones with %s', (_, text) => {
    expect(rows(text).map(({ cells, line }) => [cells[0], line])).toEqual([
      ['a', 1],
      ['b', 3],
      ['c', 4],
    ]);
  });

  it('counts the line breaks within quotes', () => {
    const found = rows('a,"x\r\ny\r\nz",b\r\n\r\nc,d,e\r\n');
    expect(found.map(({ line }) => line)).toEqual([1, 5]);
    expect(found[0]?.cells[1]).toBe('x\ny\nz');
  });

  it('tells where each cell begins, past quoted delimiters, quotes and line breaks', () => {
    const csv = openCsv('h,i,j,k\n"a,""b""",ü𝟏x,"c\nd",e\n', ',');
    const found: CsvRow[] = [];
    csv.read((row) => found.push(row));
    const row = found[1]!;
    expect([0, 1, 2, 3].map((cell) => csv.place(row, cell))).toEqual([
      { line: 2, column: 1 },
      { line: 2, column: 11 },
      { line: 2, column: 15 },
      { line: 3, column: 4 },
    ]);
  });

  it('says where a quote opened that never closes, and gives its row as broken', () => {
    const broken: boolean[] = [];
    const faults = openCsv('a,b\n1,2\n3,"4\n5,6\n', ',').read((_, isBroken) => broken.push(isBroken));
    expect(faults).toEqual([{ kind: 'unterminated quote', place: { line: 3, column: 3 } }]);
    expect(broken).toEqual([false, false, true]);
  });

  it('says where a quote closes in the middle of a cell', () => {
    const faults = openCsv('a,b\n1,"2"x\n', ',').read(() => undefined);
    expect(faults).toEqual([{ kind: 'stray quote', place: { line: 2, column: 3 } }]);
  });

  it('reads text without quotes as PapaParse reads it, each row where it stands', () => {
    const character = fc.constantFrom('a', '1', ',', ',', ';', '\n', '\n', '\r', ' ', 'ü', '🌱');
    fc.assert(
      fc.property(
        fc.string({ unit: character, maxLength: 60 }),
        fc.constantFrom(',', ';', '\t'),
        (text, delimiter) => {
          const found = rows(text, delimiter);
          const lines = text.replaceAll(/\r\n?/g, '\n');
          const theirs = Papa.parse<string[]>(lines, { delimiter, newline: '\n' }).data;
          expect(found.map(({ cells }) => cells)).toEqual(
            theirs.filter(({ length, 0: only }) => length > 1 || only !== ''),
          );
          for (const { cells, line, start } of found) {
            expect(lines.slice(start).split('\n')[0]).toBe(cells.join(delimiter));
            expect(lines.split('\n')[line - 1]).toBe(cells.join(delimiter));
          }
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('splits by the declared delimiter alone', () => {
    expect(rows('a;b,c\n1;2,5\n', ';').map(({ cells }) => cells)).toEqual([
      ['a', 'b,c'],
      ['1', '2,5'],
    ]);
  });
});
