import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { answerOf } from '../../src/commands/import-answers.ts';
import { importOptions } from '../../src/commands/import-options.ts';
import { conversation } from '../../src/commands/import.ts';
import type { Workbook } from '../../src/model/workbook.ts';
import { sha256 } from '../../src/read/sha256.ts';
import { readWorkbook } from '../../src/read/workbook.ts';
import { xlsxFile } from '../support/spreadsheets.ts';
import { runCommand } from '../support/site.ts';
import { temporaryFolder } from '../support/temporary-folder.ts';

/** Two tanks of two by two, with two lettuces, and one plant that a sign stands for. */
const rows = [
  ['Autumn lettuces'],
  ['Tank', 'Row', 'Col', 'Variety', 'Weight, oz'],
  ...['T1', 'T2'].flatMap((tank, at) =>
    [1, 2].flatMap((row) =>
      [1, 2].map((column) => [
        tank,
        row,
        column,
        (row + column + at) % 2 === 0 ? 'Cobalt Wren' : 'Slate Egret',
        5 + row + column / 4,
      ]),
    ),
  ),
];
const withSign = rows.map((row, index) => (index === 5 ? [...row.slice(0, 4), 'x'] : row));
const answers = [
  ...['--crop', 'Lettuce', '--harvested', '2025-10-20', '--season', 'autumn'],
  ...['--setting', 'greenhouse', '--allot', 'position', '--randomised'],
];

test('import shows what it would do, writes on demand, and the folder passes the check', async () => {
  const folder = await temporaryFolder();
  const sheet = join(folder, 'weights.xlsx');
  const trial = join(folder, 'autumn-lettuce-2025');
  await writeFile(sheet, xlsxFile([{ name: 'Harvest', rows: withSign }]));

  const refused = await runCommand(['import', sheet, trial, ...answers, '--write']);
  expect(refused.code).toBe(1);
  expect(refused.stderr).toContain(
    'weights.xlsx:6:5  error  spreadsheet-value  Harvest!E6: "x" is not a weight',
  );
  expect(await readdir(folder)).toEqual(['weights.xlsx']);

  const shown = await runCommand(['import', sheet, trial, ...answers, '--word', 'x=dead']);
  expect(shown.code).toBe(0);
  expect(shown.stdout).toContain('E  Weight, oz  fresh_weight in oz');
  expect(shown.stdout).toContain('Harvest!A1  Autumn lettuces  above the table');
  expect(await readdir(folder)).toEqual(['weights.xlsx']);

  const written = await runCommand(['import', sheet, trial, ...answers, '--word', 'x=dead', '--write']);
  expect(written.stderr).toContain('0 errors');
  expect(written.code).toBe(0);
  expect((await readdir(trial)).sort()).toEqual(['harvest.csv', 'layout.csv', 'source', 'trial.yaml']);
  expect((await readdir(join(trial, 'source'))).sort()).toEqual([
    'weights.xlsx',
    'weights.xlsx.not-used.csv',
  ]);
  expect(await readFile(join(trial, 'source', 'weights.xlsx'))).toEqual(await readFile(sheet));
  expect(await readFile(join(trial, 'source', 'weights.xlsx.not-used.csv'), 'utf8')).toBe(
    'cell,text,why\nHarvest!A1,Autumn lettuces,above the table\n',
  );
  const check = await runCommand(['check', trial]);
  expect(check.stdout).toBe('0 errors, 0 warnings, 0 notes\n');
  // 6.25 oz of the first plant, in g.
  const findings = JSON.parse((await runCommand(['findings', trial])).stdout) as {
    treatments: { treatment: { cultivar: string }; per_plant_set: { maximum: number } }[];
  };
  const largest = Math.max(...findings.treatments.map(({ per_plant_set: { maximum } }) => maximum));
  expect(largest).toBeCloseTo(7.5 * 28.349523125, 9);
});

test('import does not write over weights that are there, unless it is told to', async () => {
  const folder = await temporaryFolder();
  const sheet = join(folder, 'weights.xlsx');
  const trial = join(folder, 'autumn-lettuce-2025');
  await writeFile(sheet, xlsxFile([{ name: 'Harvest', rows }]));
  await runCommand(['import', sheet, trial, ...answers, '--write']);
  const harvest = await readFile(join(trial, 'harvest.csv'), 'utf8');

  await writeFile(
    sheet,
    xlsxFile([
      {
        name: 'Harvest',
        rows: [...rows.slice(0, 2), ...rows.slice(2).map((row) => [...row.slice(0, 4), 6])],
      },
    ]),
  );
  const again = await runCommand(['import', sheet, trial, '--write']);
  expect(again.code).toBe(2);
  expect(again.stderr).toContain('harvest.csv has values already: add --replace');
  expect(await readFile(join(trial, 'harvest.csv'), 'utf8')).toBe(harvest);

  const replaced = await runCommand(['import', sheet, trial, '--write', '--replace']);
  expect(replaced.stdout).toContain('Guessed: Read as trial.yaml remembers it.');
  expect(await readFile(join(trial, 'harvest.csv'), 'utf8')).toContain('T1,1,1,6\n');
});

test('import keeps what stands in a folder without trial.yaml, unless it is told to', async () => {
  const folder = await temporaryFolder();
  const sheet = join(folder, 'weights.xlsx');
  const trial = join(folder, 'autumn-lettuce-2025');
  await mkdir(trial);
  await writeFile(join(trial, 'harvest.csv'), 'what I typed last week\n');
  await writeFile(sheet, xlsxFile([{ name: 'Harvest', rows }]));
  const refused = await runCommand(['import', sheet, trial, ...answers, '--write']);
  expect(refused).toMatchObject({ code: 2, stderr: expect.stringContaining('harvest.csv is there already') });
  expect(await readdir(trial)).toEqual(['harvest.csv']);
  const replaced = await runCommand(['import', sheet, trial, ...answers, '--write', '--replace']);
  expect(replaced.code).toBe(0);
});

test('import asks at a terminal, takes corrections in turn, and writes when told that it is right', async () => {
  const folder = await temporaryFolder();
  const bytes = xlsxFile([{ name: 'Harvest', rows: withSign }]);
  const workbook = readWorkbook(bytes) as Workbook;
  const given = { name: 'weights.xlsx', bytes, sha256: sha256(bytes), workbook };
  const trial = join(folder, 'autumn-lettuce-2025');
  const options = importOptions(['weights.xlsx', trial, ...answers]);
  const destination = { answers: options.answers(), today: '2026-01-15' };
  const lines = ['yes', 'what', 'E=wait', 'E=fresh_weight in g', 'x=dead', 'yes'];
  let asked = 0;
  const said = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  const faults = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const code = await conversation(given, trial, destination, options, () =>
    Promise.resolve(lines[asked++] ?? 'no'),
  );
  const shown = said.mock.calls.map(([text]) => String(text)).join('');
  said.mockRestore();
  faults.mockRestore();
  expect(code).toBe(0);
  expect(asked).toBe(lines.length);
  expect(shown).toContain('must be said or mended first');
  expect(shown).toContain('"wait" is nothing that a column can be');
  const harvest = await readFile(join(trial, 'harvest.csv'), 'utf8');
  expect(harvest).toContain('T1,1,1,6.25,');
  expect(harvest).toContain('dead');
  expect(await readFile(join(trial, 'trial.yaml'), 'utf8')).toContain('fresh_weight in g');
});

test.each([
  ['yes', 'write'],
  ['', 'stop'],
  ['D=fresh_weight in oz', { columns: ['D=fresh_weight in oz'] }],
  ['X=dead', { words: ['X=dead'] }],
  ['n.a.=not weighed', { words: ['n.a.=not weighed'] }],
  ['headings 3-4', { headings: '3-4' }],
  ['leave out 12', { leaveOut: ['12'] }],
  ['always container=T1', { always: ['container=T1'] }],
  ['decimal ,', { decimal: ',' }],
  ['dates day first', { dates: 'day first' }],
  ['well', null],
])('"%s" typed beside the preview is understood', (line, answer) => {
  expect(answerOf(line)).toEqual(answer);
});

test('import says what is wrong with a file, a folder or an option', async () => {
  const folder = await temporaryFolder();
  const empty = join(folder, 'empty.csv');
  await writeFile(empty, '');
  expect(await runCommand(['import', empty])).toMatchObject({
    code: 1,
    stderr: expect.stringContaining('The file is empty.'),
  });
  expect(await runCommand(['import', join(folder, 'none.xlsx')])).toMatchObject({ code: 2 });
  expect(await runCommand(['import'])).toMatchObject({
    code: 2,
    stderr: expect.stringContaining('A spreadsheet is missing'),
  });
  const sheet = join(folder, 'weights.xlsx');
  await writeFile(sheet, xlsxFile([{ name: 'Harvest', rows }]));
  const unsaid = await runCommand(['import', sheet, join(folder, 'new-trial')]);
  expect(unsaid).toMatchObject({ code: 2, stderr: expect.stringContaining('--crop is missing') });
  const wrong = await runCommand(['import', sheet, ...answers, '--column', 'E=wait']);
  expect(wrong).toMatchObject({
    code: 2,
    stderr: expect.stringContaining('"wait" is nothing that a column can be'),
  });
  const broken = join(folder, 'broken-trial');
  await mkdir(broken);
  await writeFile(join(broken, 'trial.yaml'), 'title: [\n');
  const closed = await runCommand(['import', sheet, broken]);
  expect(closed).toMatchObject({ code: 1, stderr: expect.stringContaining('trial.yaml') });
  expect(closed.stderr).not.toContain('    at ');
});
