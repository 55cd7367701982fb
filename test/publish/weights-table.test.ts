import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { publishedFiles } from '../../src/publish/files.ts';
import { csvText } from '../../src/publish/csv.ts';
import { unguardedText } from '../../src/publish/formula-guard.ts';
import { weightsTable } from '../../src/publish/weights-table.ts';
import { bare, full, library, text } from './example.ts';
import { demo } from './published.ts';

/** An independent reader: PapaParse reads what our own writer wrote. */
function readBack(csv: string): Record<string, string>[] {
  const { data, errors } = Papa.parse<Record<string, string>>(csv, {
    header: true,
    skipEmptyLines: 'greedy',
  });
  expect(errors).toEqual([]);
  return data;
}

const weights = (item: typeof full): string =>
  text(publishedFiles(item, library).find((file) => file.name === 'weights.csv'));

describe('weightsTable', () => {
  test('has the columns of the contract, in order', () => {
    expect(weights(full).split('\n')[0]).toBe(
      'container,row,column,plot,block,cultivar,strength,cut,plant,fresh_weight,leaves,height,status,pot_total,remark',
    );
    expect(weights(bare).split('\n')[0]).toBe(
      'container,row,column,plot,block,cut,plant,fresh_weight,status,pot_total,remark',
    );
  });

  test('holds every row of the harvest in its order, each number to the last bit', () => {
    const rows = readBack(weights(full));
    expect(rows).toHaveLength(full.trial.harvest.length);
    for (const [index, record] of full.trial.harvest.entries()) {
      const row = rows[index]!;
      expect([row['container'], row['row'], row['column'], row['cut'], row['status']]).toEqual(
        [record.container, record.row, record.column, record.cut, record.status].map(String),
      );
      for (const variable of ['fresh_weight', 'leaves', 'height']) {
        const value = record.values[variable] ?? null;
        expect(row[variable] === '' ? null : Number(row[variable])).toBe(value);
      }
    }
    expect(readBack(weights(bare)).map((row) => Number(row['fresh_weight']))).toEqual([120, 135, 0.1 + 0.2]);
  });

  test('joins the treatment, plot and block of the layout', () => {
    const [first] = readBack(weights(full));
    expect(first).toMatchObject({ plot: 'T1-1', block: '1', cultivar: 'cobalt-wren', strength: '0.5' });
  });

  test('gives a pot total once, and only where the plants were not weighed singly', () => {
    const totals = readBack(weights(full)).map((row) => row['pot_total']);
    expect(totals.filter((total) => total !== '')).toEqual([
      String(9.7 * 28.349523125),
      String(9.7 * 28.349523125),
    ]);
    const singly = {
      ...bare.trial,
      harvest: bare.trial.harvest.map((record) => ({ ...record, plant: 1, potTotal: 120 })),
    };
    expect(weightsTable(singly).rows.map((row) => row.at(-2))).toEqual([null, null, null]);
  });

  test('keeps every remark, none of which a spreadsheet would run', () => {
    const rows = readBack(weights(full));
    expect(rows.map((row) => unguardedText(row['remark'] ?? ''))).toEqual(
      full.trial.harvest.map((record) => record.remark),
    );
    for (const row of rows) {
      for (const cell of Object.values(row)) expect(cell).not.toMatch(/^[=+@\t\r]|^-(?!\d+(\.\d+)?$)/);
    }
    expect(rows.find((row) => row['column'] === '2')?.['cultivar']).toBe("'=2");
  });
});

describe.each(demo.trials.map((item) => [item.trial.id, item] as const))(
  'weights.csv of the demo, %s',
  (_id, item) => {
    test('holds the numbers of harvest.csv as it was typed, row for row', () => {
      const typed = readBack(text({ bytes: item.trial.files.get('harvest.csv')! }));
      const published = readBack(
        text(publishedFiles(item, demo).find((file) => file.name === 'weights.csv')),
      );
      expect(published).toHaveLength(typed.length);
      for (const [index, row] of typed.entries()) {
        for (const name of ['container', 'row', 'column', 'fresh_weight'])
          expect(published[index]?.[name]).toBe(row[name]);
        expect(published[index]?.['remark']).toBe(row['remark'] ?? '');
      }
    });
  },
);

describe('csvText', () => {
  test('quotes as RFC 4180 says and ends each line with LF', () => {
    expect(
      csvText({
        columns: ['a', 'b'],
        rows: [
          ['x,y', 'say "so"'],
          [null, 'two\nlines'],
        ],
      }),
    ).toBe('a,b\n"x,y","say ""so"""\n,"two\nlines"\n');
  });
  test('reads back as what was written, whatever the text', () => {
    const cell = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom('"', ',', '\n', '\r', "'", '=', 'a', ' ') }),
    );
    const rows = fc.array(fc.tuple(fc.constant('x'), cell, cell), { minLength: 1 });
    fc.assert(
      fc.property(rows, (written) => {
        const text = csvText({ columns: ['a', 'b', 'c'], rows: written });
        const { data } = Papa.parse<string[]>(text, { delimiter: ',', newline: '\n' });
        const read = data.slice(1, -1).map((row) => row.map(unguardedText));
        return JSON.stringify(read) === JSON.stringify(written);
      }),
    );
  });
  test('writes numbers so that they read back, and nothing for what is no number', () => {
    expect(csvText({ columns: ['a'], rows: [[0.1 + 0.2], [-0], [1e-7], [Number.NaN]] })).toBe(
      'a\n0.30000000000000004\n0\n1e-7\n\n',
    );
  });
});
