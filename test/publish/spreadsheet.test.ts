import { unzipSync } from 'fflate';
import Papa from 'papaparse';
import readSheets from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';
import { publishedFiles } from '../../src/publish/files.ts';
import { columnLetters, spreadsheet } from '../../src/publish/spreadsheet.ts';
import { full, library, text } from './example.ts';
import { datasets, published } from './published.ts';

type Cells = readonly (readonly unknown[])[];

/** The cells of each sheet, read by a reader that is not ours; an empty cell is null. */
async function cellsOf(bytes: Uint8Array): Promise<Map<string, Cells>> {
  const sheets = await readSheets(Buffer.from(bytes), { trim: false });
  return new Map(sheets.map(({ sheet, data }) => [sheet, data]));
}

/** Tells a spreadsheet's cell as the CSV file writes it. */
const asText = (cell: unknown): string => (cell === null || cell === undefined ? '' : String(cell));

describe.each(datasets)('the spreadsheet of %s', (_name, item, of) => {
  const bytes = publishedFiles(item, of).find((file) => file.name === `${item.trial.id}.xlsx`)!.bytes;

  test.each(['weights', 'summary'])(
    'has in its sheet %s what the CSV file of that name has, cell for cell',
    async (name) => {
      const sheet = (await cellsOf(bytes)).get(name)!;
      const { data } = Papa.parse<string[]>(published(`${name}.csv`, item, of), { skipEmptyLines: true });
      expect(sheet).toHaveLength(data.length);
      for (const [index, row] of data.entries()) {
        expect(row.map((_cell, column) => asText(sheet[index]?.[column]))).toEqual(row);
      }
    },
  );

  test('holds numbers as numbers', async () => {
    const [header, ...rows] = (await cellsOf(bytes)).get('weights')!;
    const column = header!.indexOf('fresh_weight');
    const values = item.trial.harvest.map((record) => record.values['fresh_weight'] ?? null);
    expect(rows.map((row) => row[column] ?? null)).toEqual(values);
  });

  test('has the four sheets, and no formula in any', async () => {
    expect([...(await cellsOf(bytes)).keys()]).toEqual(['weights', 'layout', 'summary', 'dictionary']);
    for (const [name, part] of Object.entries(unzipSync(bytes))) {
      if (name.startsWith('xl/worksheets/')) expect(text({ bytes: part })).not.toMatch(/<f[ >]/);
    }
  });

  test('explains every column of weights in the dictionary', async () => {
    const sheets = await cellsOf(bytes);
    const explained = sheets
      .get('dictionary')!
      .filter((row) => row[0] === 'weights')
      .map((row) => row[1]);
    expect(explained).toEqual(sheets.get('weights')![0]);
  });
});

describe('spreadsheet', () => {
  const about = { title: 'T', creator: 'C', day: '2025-12-01' };
  const one = (cell: string | number): Uint8Array =>
    spreadsheet([{ name: 'a', table: { columns: ['x'], rows: [[cell]] } }], about);

  test('guards what would run, and keeps what looks like an escape', async () => {
    expect((await cellsOf(one('=1+1'))).get('a')![1]).toEqual([`'=1+1`]);
    const sheet = text({ bytes: unzipSync(one('_x0041_ & <b>'))['xl/worksheets/sheet1.xml']! });
    expect(sheet).toContain('_x005F_x0041_ &amp; &lt;b&gt;');
  });
  test('is alike to the byte at each writing', () => {
    expect(one(0.1 + 0.2)).toEqual(one(0.1 + 0.2));
  });
  test('keeps a double to the last bit', async () => {
    expect((await cellsOf(one(0.1 + 0.2))).get('a')![1]).toEqual([0.1 + 0.2]);
  });
});

test('columnLetters counts as spreadsheets do', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
});

test('the sheet layout has every position', async () => {
  const bytes = publishedFiles(full, library).find((file) => file.name.endsWith('.xlsx'))!.bytes;
  expect((await cellsOf(bytes)).get('layout')!.slice(0, 2)).toEqual([
    ['container', 'row', 'column', 'plot', 'block', 'cultivar', 'strength', 'plants'],
    ['T1', 1, 1, 'T1-1', '1', 'cobalt-wren', '0.5', 2],
  ]);
});
