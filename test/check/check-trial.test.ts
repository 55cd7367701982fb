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
});
