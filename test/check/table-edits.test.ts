import { describe, expect, it } from 'vitest';
import { bytesOf, cellsOf, withExchanged, withFilled, withMoved } from '../../src/check/table-edits.ts';

const form = { delimiter: ';', decimal: ',', headings: new Map<string, string>() } as const;
const text = '\na;b;c\n1;"x;""y""";"two\nlines"\n\n;2,5;\n3;;\n';
const read = (source: string): ReturnType<typeof cellsOf> =>
  cellsOf('harvest.csv', new TextEncoder().encode(source), form);
const written = (cells: Parameters<typeof bytesOf>[0]): string => new TextDecoder().decode(bytesOf(cells));

describe('the edits of a table', () => {
  const cells = read(text)!;

  it('write a table as it was, each row in its line', () => {
    expect(written(cells)).toBe(text);
    expect(cells.rows.map(({ line }) => line)).toEqual([2, 3, 6, 7]);
  });

  it('exchange headings, move a column and fill it', () => {
    expect(written(withExchanged(cells, 0, 2)).split('\n')[1]).toBe('c;b;a');
    const column = (edited: typeof cells, at: number): string[] => edited.rows.map((row) => row.cells[at]!);
    expect(column(withMoved(cells, 1, 1), 1)).toEqual(['b', '2,5', '']);
    expect(column(withMoved(cells, 1, -1), 1)).toEqual(['b', '', 'x;"y"', '2,5']);
    expect(column(withFilled(cells, 0), 0)).toEqual(['a', '1', '1', '3']);
  });

  it('are not made of a table that is at fault', () => {
    expect(read('a;b\n1\n')).toBeNull();
    expect(read('a;b\n1;"2\n')).toBeNull();
    expect(read('a;b\n')).toBeNull();
  });
});
