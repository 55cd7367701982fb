import { expect, test } from 'vitest';
import { rectangleInBoth, volumeInBoth } from '../../../src/compute/growing/quantities.ts';
import { datesOf } from '../../../src/compute/growing/dates-of.ts';
import { readingsTable } from '../../../src/compute/growing/readings-table.ts';
import { trialOf } from '../../support/trial-of.ts';

const trial = trialOf([{ container: 'T1', treatment: { cultivar: 'a' }, weight: 100 }]);

test('a cover is said in the unit it was measured in and in inches, by 1 in = 2.54 cm', () => {
  expect(rectangleInBoth({ length: 120, width: 60, unit: 'cm' })).toEqual({
    metric: '120 × 60\u00a0cm',
    us: '47 × 24\u00a0in',
  });
  expect(rectangleInBoth({ length: 48, width: 24, unit: 'in' }).metric).toBe('121.9 × 61.0\u00a0cm');
});

test('a volume is said in litres and US gallons, by 1 US gal = 3.785411784 L', () => {
  expect(volumeInBoth({ value: 70, unit: 'L' }).metric).toBe('70\u00a0L');
  expect(volumeInBoth({ value: 10, unit: 'gal' }).metric).toBe('37.9\u00a0L');
});

test('each date after the first says its day', () => {
  const dated = {
    ...trial,
    metadata: { ...trial.metadata, dates: { sown: '2025-08-25', cuts: ['2025-10-20'] as [string] } },
  };
  expect(datesOf(dated).map(({ text }) => text.replaceAll('\u00a0', ' '))).toEqual([
    '25 August 2025',
    '20 October 2025, day 56',
  ]);
});

test('columns that nobody read are left out, and an empty reading is a dash, never 0', () => {
  const nothing = { added: null, ec: null, temperature: null, rain: null, overflow: null, remark: '' };
  const readings = [
    { date: '2025-09-12', container: 'T1', level: 10.1, ph: 5.7, line: 2, ...nothing },
    { date: '2025-09-19', container: 'T1', level: 9.8, ph: null, line: 3, ...nothing },
  ];
  const table = readingsTable({ ...trial, readings })!;
  expect(table.columns.map(({ heading }) => heading)).toEqual(['Day', 'Container', 'Level', 'pH']);
  expect(table.rows[1]!.cells.at(-1)).toBe('–');
  expect(readingsTable({ ...trial, readings: [] })).toBeNull();
});
