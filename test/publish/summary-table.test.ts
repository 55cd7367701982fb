import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import summarySchema from '../../schemas/summary.table.json' with { type: 'json' };
import { publishedFiles } from '../../src/publish/files.ts';
import { summaryTable } from '../../src/publish/summary-table.ts';
import { bare, full, library, text } from './example.ts';

const rowsOf = (item: typeof full): Record<string, string>[] =>
  Papa.parse<Record<string, string>>(
    text(publishedFiles(item, library).find((file) => file.name === 'summary.csv')),
    { header: true, skipEmptyLines: true },
  ).data;

describe('summaryTable', () => {
  test('has the columns that its table schema names, in order', () => {
    const names = summarySchema.fields.map((field) => field.name).filter((name) => name !== '{factor}');
    expect(summaryTable(bare.trial, bare.findings!).columns).toEqual(names);
    expect(summaryTable(full.trial, full.findings!).columns).toEqual(['cultivar', 'strength', ...names]);
  });

  test('has a row for each treatment over all cuts, then one for each cut', () => {
    const cuts = rowsOf(full).map((row) => row['cut']);
    expect(cuts).toEqual([
      ...Array<string>(4).fill('all'),
      ...Array<string>(4).fill('1'),
      ...Array<string>(4).fill('2'),
    ]);
    expect(rowsOf(bare).map((row) => row['cut'])).toEqual(['all']);
  });

  test('reads back as the findings, number for number', () => {
    const rows = rowsOf(full);
    for (const [index, treatment] of full.findings!.treatments.entries()) {
      const row = rows[index]!;
      expect(row['kg_per_m2']).toBe(treatment.kg_per_m2 === null ? '' : String(treatment.kg_per_m2));
      for (const measure of ['per_plant_harvested', 'per_plant_set', 'per_pot', 'per_container'] as const) {
        for (const name of ['n', 'mean', 'sd', 'cv', 'median'] as const) {
          const value = treatment[measure]?.[name] ?? null;
          expect(row[`${measure}_${name}`], `${measure}_${name}`).toBe(value === null ? '' : String(value));
        }
      }
    }
  });

  test('describes three pots of 120, 135 and 0.3 g by their mean', () => {
    const [row] = rowsOf(bare);
    expect(Number(row?.['per_pot_mean'])).toBeCloseTo((120 + 135 + 0.3) / 3, 10);
    expect(row?.['per_pot_n']).toBe('3');
  });
});
