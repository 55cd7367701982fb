import { describe, expect, it } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { asBytes, cultivars, goodFiles } from './good-folder.ts';

const context = { cultivars, today: '2026-01-15', prefix: 'trials/' };
const check = (files: ReadonlyMap<string, string>) => checkTrial('two-lettuces', asBytes(files), context);

describe('checkTrial', () => {
  it('finds nothing in a good folder and gives all of its positions and rows', () => {
    const { trial, problems } = check(goodFiles());
    expect(problems).toEqual([]);
    expect(trial?.positions).toHaveLength(8);
    expect(trial?.harvest).toHaveLength(8);
    expect(trial?.harvest[0]).toEqual({
      container: 'T1',
      row: 1,
      column: 1,
      cut: 1,
      date: '2025-10-20',
      plant: 1,
      status: 'weighed',
      values: { fresh_weight: 131 },
      potTotal: null,
      remark: '',
      line: 2,
    });
    expect(trial?.harvest[7]).toMatchObject({
      status: 'dead',
      values: { fresh_weight: null },
      remark: 'slugs',
    });
  });

  it("reads a grower's own columns, unit, delimiter and decimal mark, and gives g", () => {
    const files = goodFiles();
    edit(
      files,
      'trial.yaml',
      (text) =>
        `${text}harvest: {columns: {fresh_weight: {column: Wt, unit: kg}}, delimiter: ";", decimal: ","}\n`,
    );
    edit(files, 'harvest.csv', (text) =>
      text
        .replace('fresh_weight', 'Wt')
        .replaceAll(/,(\d{3}),/g, ',0_$1,')
        .replaceAll(',', ';')
        .replaceAll('_', ','),
    );
    const { trial, problems } = check(files);
    expect(problems).toEqual([]);
    expect(trial?.harvest.map(({ values }) => values['fresh_weight'])).toEqual([
      131,
      142,
      118,
      156,
      149,
      137,
      124,
      null,
    ]);
  });

  it('plants the whole grid where there is no layout.csv, with the plants that plants_per_pot says', () => {
    const files = goodFiles();
    files.delete('layout.csv');
    edit(files, 'trial.yaml', (text) =>
      text
        .replace(
          /factors:[^]*design:.*/,
          `factors: [{id: plants_per_pot, name: Plants in a pot, levels: [{id: "1"}, {id: "2"}]}]
design: {arrangement: unreplicated, allotted: container, randomised: false}`,
        )
        .replace('rows: 2, columns: 2', 'rows: 1, columns: 2, block: "a", treatment: {plants_per_pot: "1"}')
        .replace('rows: 2, columns: 2', 'rows: 1, columns: 1, block: "b", treatment: {plants_per_pot: "2"}'),
    );
    files.set(
      'harvest.csv',
      'container,row,column,plant,fresh_weight,pot_total\nT1,1,1,,131,\nT1,1,2,1,142,\nT2,1,1,1,90,\nT2,1,1,2,80,170\n',
    );
    const { trial, problems } = check(files);
    expect(problems).toEqual([]);
    expect(
      trial?.positions.map(({ container, block, plants, line }) => [container, block, plants, line]),
    ).toEqual([
      ['T1', 'a', 1, null],
      ['T1', 'a', 1, null],
      ['T2', 'b', 2, null],
    ]);
    expect(trial?.harvest.map(({ plant, potTotal }) => [plant, potTotal])).toEqual([
      [1, null],
      [1, null],
      [1, null],
      [2, 170],
    ]);
  });

  it('takes a row without a plant number for the whole pot where several plants were set', () => {
    const files = goodFiles();
    edit(files, 'layout.csv', (text) =>
      text.replace('cultivar\n', 'cultivar,plants\n').replaceAll(/(wren|egret)\n/g, '$1,3\n'),
    );
    const { trial, problems } = check(files);
    expect(problems).toEqual([]);
    expect(trial?.harvest.every(({ plant }) => plant === null)).toBe(true);
    expect(trial?.positions.every(({ plants }) => plants === 3)).toBe(true);
  });

  it('fills in the date of the cut, and keeps a date of the row', () => {
    const files = goodFiles();
    edit(files, 'harvest.csv', (text) =>
      text.replace('remark', 'date').replace('131,,', '131,,2025-10-21').replace('slugs', ''),
    );
    const { trial } = check(files);
    expect(trial?.harvest.slice(0, 2).map(({ date }) => date)).toEqual(['2025-10-21', '2025-10-20']);
  });

  it('keeps a weight of zero that the grower says was weighed', () => {
    const files = goodFiles();
    edit(files, 'harvest.csv', (text) => text.replace('118,,', '0,weighed,'));
    expect(check(files).trial?.harvest[2]?.values).toEqual({ fresh_weight: 0 });
  });

  it('publishes an accepted error as a query with its reason, and a warning as one without', () => {
    const files = goodFiles();
    edit(
      files,
      'trial.yaml',
      (text) =>
        text
          .replace('id: T1, kind: tank,', 'id: T1, kind: tank, weighed_total: {value: 600, unit: g},')
          .replace('lowest: 1,', 'lowest: 120,') +
        'accepted: [{rule: container-total, where: T1, reason: The crate was weighed wet.}]\n',
    );
    const { trial, problems } = check(files);
    expect(problems.map(({ severity }) => severity)).toEqual(['warning', 'warning']);
    expect(trial?.queries.map(({ problem, reason }) => [problem.rule, problem.where, reason])).toEqual(
      [
        ['container-total', 'T1', 'The crate was weighed wet.'],
        ['outside-the-range', 'T1 2 1', null],
      ].sort(),
    );
    const elsewhere = new Map(files).set(
      'trial.yaml',
      files.get('trial.yaml')!.replace('where: T1', 'where: T2'),
    );
    expect(check(elsewhere).trial).toBeNull();
  });

  it('lets a trial that is planned or growing wait for its dates, lots and weights', () => {
    for (const status of ['planned', 'growing']) {
      const files = new Map([['trial.yaml', goodFiles().get('trial.yaml')!]]);
      edit(files, 'trial.yaml', (text) =>
        text
          .replace('finished', status)
          .replace(/releases:[^]*/, '')
          .replace(/dates:.*\n/, ''),
      );
      const { trial, problems } = check(files);
      expect(problems).toEqual([]);
      expect(trial?.harvest).toEqual([]);
    }
  });

  it('reads readings with their own decimal mark, and leaves null where nothing was read', () => {
    const files = goodFiles().set(
      'readings.csv',
      'date,container,level,added,remark\n2025-09-12,T1,9.8,,filled\n',
    );
    expect(check(files).trial?.readings).toEqual([
      {
        date: '2025-09-12',
        container: 'T1',
        level: 9.8,
        added: null,
        ec: null,
        ph: null,
        temperature: null,
        rain: null,
        overflow: null,
        remark: 'filled',
        line: 2,
      },
    ]);
  });

  it('reports the faults of all files in one run, sorted by file and line', () => {
    const files = goodFiles();
    edit(files, 'trial.yaml', (text) =>
      text.replace('licence: CC0-1.0', 'licence: CC-BY').replace('52.9', '52.91734'),
    );
    edit(files, 'layout.csv', (text) => text.replace('T1,1,2,slate-egret', 'T1,1,2,slate-egrett'));
    edit(files, 'harvest.csv', (text) => text.replace('118', '12O').replace('142', '"142,5"'));
    expect(check(files).problems.map(({ file, line, rule }) => `${file}:${String(line)} ${rule}`)).toEqual([
      'trials/two-lettuces/harvest.csv:3 weight-not-a-number',
      'trials/two-lettuces/harvest.csv:4 weight-not-a-number',
      'trials/two-lettuces/layout.csv:3 unknown-level',
      'trials/two-lettuces/trial.yaml:8 precise-location',
      'trials/two-lettuces/trial.yaml:10 unknown-licence',
    ]);
  });

  it('checks 20,000 rows in far less than a second for each thousand', () => {
    const places = Array.from(
      { length: 20_000 },
      (_, index) => `T1,${String(1 + Math.floor(index / 100))},${String(1 + (index % 100))}`,
    );
    const files = goodFiles();
    edit(files, 'trial.yaml', (text) =>
      text.replace('rows: 2, columns: 2', 'rows: 200, columns: 100').replace(/ {2}- \{id: T2.*\n/, ''),
    );
    files.set(
      'layout.csv',
      `container,row,column,cultivar\n${places.map((at, i) => `${at},${(i * 7) % 13 < 6 ? 'cobalt-wren' : 'slate-egret'}\n`).join('')}`,
    );
    files.set(
      'harvest.csv',
      `container,row,column,fresh_weight\n${places.map((at, i) => `${at},${String(101 + ((i * 7919) % 89))}\n`).join('')}`,
    );
    const bytes = asBytes(files);
    const began = performance.now();
    const { trial } = checkTrial('two-lettuces', bytes, context);
    expect(trial?.harvest).toHaveLength(20_000);
    expect(performance.now() - began).toBeLessThan(10_000);
  });
});

function edit(files: Map<string, string>, name: string, change: (text: string) => string): void {
  const before = files.get(name) ?? '';
  const after = change(before);
  expect(after).not.toBe(before);
  files.set(name, after);
}
