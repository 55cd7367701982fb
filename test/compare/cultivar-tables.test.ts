import { describe, expect, test } from 'vitest';
import { cultivarIdentity } from '../../src/compare/cultivar-identity.ts';
import { cultivarRemarks } from '../../src/compare/cultivar-remarks.ts';
import { cultivarSeasonsTable, randomTrialsTable } from '../../src/compare/cultivar-tables.ts';
import { seasons } from '../../src/compare/seasons.ts';
import { barley, trialsOf } from './barley-trials.ts';

const trials = trialsOf(barley, 'Trebi');
const entry = seasons(trials).find(({ measure }) => measure === 'per_pot')!;

describe("a cultivar's tables", () => {
  test('show each of its trials with its mean and its percent of the check there', () => {
    const table = cultivarSeasonsTable(entry, 'Velvet', (id) => `Trial of ${id}`);
    expect(table.rows).toHaveLength(12);
    const row = table.rows.find(({ heading }) => heading === 'Trial of Waseca 1931')!;
    const of = (variety: string) =>
      barley.find((cell) => cell.variety === variety && cell.trial === 'Waseca 1931')!.y;
    expect(row.cells[2]).toMatchObject({ metric: of('Velvet').toFixed(1) });
    expect(row.cells.at(-1)).toBe(String(Math.round((100 * of('Velvet')) / of('Trebi'))));
    expect(table.notes.join(' ')).toContain('did not replicate its cultivars');
  });

  test('set the trials as they were beside the trials as a sample', () => {
    const table = randomTrialsTable(entry, (cultivar) => cultivar)!;
    const trebi = table.rows.find(({ heading }) => heading === 'Trebi')!;
    // lme4: 39.40, standard error 2.97 with trials random, 1.32 with trials fixed.
    expect(
      trebi.cells.map((cell) => (typeof cell === 'object' && 'metric' in cell ? cell.metric : cell)),
    ).toEqual(['39.4', '1.32', '39.4', '2.97']);
    const one = seasons(trials.slice(0, 1)).find(({ measure }) => measure === 'per_pot')!;
    expect(randomTrialsTable(one, String)).toBeNull();
  });
});

test('the remarks of a cultivar are those beside its own weights, with their rows', () => {
  const [first] = trials;
  const { trial } = first!;
  const harvest = trial.harvest.map((record, index) => ({ ...record, remark: `remark ${String(index)}` }));
  const { of } = cultivarIdentity([{ trial }]);
  const at = trial.positions.findIndex(({ treatment }) => treatment['cultivar'] === 'Velvet');
  expect(cultivarRemarks({ ...trial, harvest }, 'Velvet', of)).toMatchObject([
    { text: `remark ${String(at)}`, row: at + 2, status: 'weighed' },
  ]);
});
