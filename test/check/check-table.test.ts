import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { checkTable } from '../../src/check/check-table.ts';
import type { TableAnswers } from '../../src/check/folder-of-table.ts';
import { printProblem } from '../../src/check/print-problem.ts';
import { readTableAlone } from '../../src/check/table-alone.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';

const answers: TableAnswers = {
  crop: { name: 'Lettuce', species: 'Lactuca sativa' },
  harvested: '2025-10-20',
  season: 'autumn',
  setting: 'greenhouse',
  unit: 'g',
  allotted: 'position',
  randomised: true,
};

const table = `Tank,Row,Col,Variety,Weight (g),Notes
A,1,1,Slate Egret,142,
A,1,2,Cobalt Wren,131,
A,2,1,Cobalt Wren,118,slugs
A,2,2,Slate Egret,156,
`;

function check(text: string, changes: Partial<TableAnswers> = {}) {
  const found = checkTable(strToU8(text), { ...answers, ...changes }, '2026-01-15');
  if ('faults' in found) return { faults: found.faults, lines: [], trial: null, unused: [] };
  const { checked, unused } = found;
  return {
    faults: [],
    lines: checked.problems.map(printProblem),
    trial: checked.trials[0] ?? null,
    unused,
  };
}

describe('a table of weights that stands for a trial', () => {
  it('is a trial with what its columns and the answers say', () => {
    const { lines, faults, trial } = check(table);
    expect([...lines, ...faults]).toEqual([]);
    expect(trial?.metadata).toMatchObject({
      crop: answers.crop,
      season: { year: 2025, name: 'autumn' },
      dates: { cuts: ['2025-10-20'] },
      design: { arrangement: 'completely randomised', allotted: 'position', randomised: true },
      containers: [{ id: 'A', rows: 2, columns: 2 }],
    });
    expect(
      trial?.harvest.map(({ container, row, column, values, remark }) => [
        container,
        row,
        column,
        values['fresh_weight'],
        remark,
      ]),
    ).toEqual([
      ['A', 1, 1, 142, ''],
      ['A', 1, 2, 131, ''],
      ['A', 2, 1, 118, 'slugs'],
      ['A', 2, 2, 156, ''],
    ]);
    const [item] = siteFindings([trial!]);
    const means = item?.findings?.treatments.map((one) => [
      one.treatment['cultivar'],
      one.per_plant_set?.mean,
    ]);
    expect(new Map(means as [string, number][])).toEqual(
      new Map([
        ['slate-egret', 149],
        ['cobalt-wren', 124.5],
      ]),
    );
  });

  it('is checked by the rules of every trial, its own lines and columns named', () => {
    expect(check(table.replace('118', '11B').replace('156', '')).lines).toEqual([
      'harvest.csv:4:19  error  weight-not-a-number  "11B" is not a number; write digits only, such as 118',
      expect.stringMatching(/^harvest\.csv:5:19 {2}error {2}no-weight-no-status/),
    ]);
  });

  it('is read with semicolons, decimal commas, weights in kg and columns of its own', () => {
    const text =
      'container;row;column;cultivar;fresh weight kg;picked by\nA;1;1;x-one;0,142;Imke\nA;1;2;x-two;0,2;\n';
    const { lines, trial, unused } = check(text, { unit: 'kg' });
    expect(lines).toEqual([]);
    expect(trial?.harvest.map(({ values }) => values['fresh_weight'])).toEqual([142, 200]);
    expect(unused).toEqual(['picked by']);
    expect(trial?.metadata.design.arrangement).toBe('unreplicated');
    const read = readTableAlone(strToU8(text));
    expect('unit' in read && read.unit).toBe('kg');
  });

  it('is of blocks where each block holds every cultivar, and has a cut for each that it names', () => {
    const rows = [1, 2].flatMap((cut) =>
      [0, 1, 2, 3].map((at) => {
        return `T1,${1 + (at >> 1)},${1 + (at & 1)},cv-${at & 1},b${at >> 1},${cut},2025-1${cut}-0${cut},${100 + at + cut}`;
      }),
    );
    const { lines, trial } = check(
      ['container,row,column,cultivar,block,cut,date,weight', ...rows, ''].join('\n'),
    );
    expect(lines).toEqual([]);
    expect(trial?.metadata.design.arrangement).toBe('randomised blocks');
    expect(trial?.metadata.dates?.cuts).toEqual(['2025-11-01', '2025-12-02']);
  });

  it('says which columns it lacks, instead of guessing a layout', () => {
    expect(check('cultivar,weight\nx,1\n').faults).toEqual([
      'The table lacks the column container, the column row and the column column: without the place and cultivar of each weight nothing can be said of what grew where. Add them, or give the folder of the trial.',
    ]);
    expect(check('').faults).toHaveLength(1);
    expect(checkTable(new Uint8Array([0xff, 0xfe, 0x41, 0]), answers, '2026-01-15')).toEqual({
      faults: ['It is not UTF-8 text: save it from the spreadsheet as CSV UTF-8.'],
    });
  });

  it('takes no place for two cultivars', () => {
    expect(check(`${table}A,1,1,Cobalt Wren,120,\n`).faults).toEqual([
      'Line 6 has Cobalt Wren at A row 1 column 1, but line 2 has Slate Egret there.',
    ]);
  });

  it('takes no answer that the layout contradicts', () => {
    expect(check(table, { allotted: 'container' }).lines[0]).toMatch(/allotted-contradicted/);
    expect(check(table, { harvested: '2027-01-01' }).lines.join()).toMatch(/date-in-the-future/);
  });
});
