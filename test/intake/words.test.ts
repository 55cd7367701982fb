import { describe, expect, it } from 'vitest';
import { columnLetters, columnOfLetters } from '../../src/intake/cell-name.ts';
import { useOfWords, wordsOfUse } from '../../src/intake/column-words.ts';
import { containerNamed } from '../../src/intake/container-named.ts';
import { dateOfWords, orderOfDates } from '../../src/intake/dates-in-words.ts';
import { useOfHeading } from '../../src/intake/heading-use.ts';
import type { KnownTrial } from '../../src/intake/known.ts';
import { placeForms, type ColumnUse } from '../../src/intake/mapping.ts';
import { placeInWords } from '../../src/intake/place-in-words.ts';

const known: KnownTrial = {
  factors: [{ id: 'cultivar', name: 'Cultivar', kind: 'cultivar', levels: [{ id: 'a' }, { id: 'b' }] }],
  containers: [
    { id: 'T1', rows: 3, columns: 4 },
    { id: 'north-2', rows: 3, columns: 4 },
  ],
  variables: [
    { id: 'fresh_weight', name: 'Fresh weight', unit: 'g' },
    { id: 'height', name: 'Height', unit: 'cm' },
  ],
  cuts: ['2025-10-20', '2025-11-10'],
};

describe('a heading says what its column is', () => {
  const cases: readonly (readonly [readonly string[], ColumnUse | null])[] = [
    [['Tank'], { is: 'container' }],
    [['Tank no.'], { is: 'container' }],
    [['Fila'], { is: 'row' }],
    [['Fresh weight'], { is: 'fresh_weight' }],
    [['WEIGHT [g]'], { is: 'fresh_weight', unit: 'g' }],
    [['Peso fresco (kg)'], { is: 'fresh_weight', unit: 'kg' }],
    [['g'], { is: 'fresh_weight', unit: 'g' }],
    [['height'], { is: 'height' }],
    [['Plant 3'], { is: 'fresh_weight', at: { plant: '3' } }],
    [['Plant 3 (oz)'], { is: 'fresh_weight', unit: 'oz', at: { plant: '3' } }],
    [['Weight, g', '2'], { is: 'fresh_weight', unit: 'g', at: { plant: '2' } }],
    [['2nd cut', 'Weight'], { is: 'fresh_weight', at: { cut: '2' } }],
    [['Segundo corte', 'Peso'], { is: 'fresh_weight', at: { cut: '2' } }],
    [['2025-11-10', 'P1'], { is: 'fresh_weight', at: { cut: '2', plant: '1' } }],
    [['T1', 'weight'], { is: 'fresh_weight', at: { container: 'T1' } }],
    [['Variety'], { is: 'cultivar' }],
    [['Observaciones'], { is: 'remark' }],
    [['Weighed by'], null],
    [['Harvest of autumn 2025'], null],
    [['pH'], null],
    [[''], null],
  ];
  it.each(cases)('%j', (parts, use) => {
    expect(useOfHeading(parts, known)).toEqual(use);
  });
});

describe('a use is written in words that say it again', () => {
  const uses: readonly ColumnUse[] = [
    { is: 'container' },
    { is: 'container', isCarried: true },
    { is: 'fresh_weight', unit: 'oz', at: { plant: '2', cut: '1' } },
    { is: 'fresh_weight', unit: '[oz_av]' },
    { is: 'height', unit: 'cm', at: { container: 'north-2' } },
    ...placeForms.map((as) => ({ is: 'place', as })),
  ];
  it.each(uses.map((use) => [wordsOfUse(use), use] as const))('%s', (words, use) => {
    expect(useOfWords(words)).toEqual(use);
  });

  it.each(['', '  ', 'fresh_weight of oz', 'place as they stand', 'fresh_weight, leaf 2', '2'])(
    '%j is none',
    (words) => {
      expect(useOfWords(words)).toBeNull();
    },
  );
});

describe('a container is named', () => {
  it.each([
    ['T1', 'T1'],
    ['t1', 'T1'],
    ['Tank T1', 'T1'],
    ['Tank 1', 'T1'],
    ['1', 'T1'],
    ['North 2', 'north-2'],
    ['Tank 2', 'north-2'],
    ['T3', null],
    ['Plant 1', null],
    ['', null],
  ])('%j is %j', (text, id) => {
    expect(containerNamed(text, known)).toBe(id);
  });

  it('is not guessed where two could be meant', () => {
    const twins = { containers: [...known.containers, { id: 'south-2', rows: 1, columns: 1 }] };
    expect(containerNamed('Tank 2', twins)).toBeNull();
  });
});

describe('a place in one cell', () => {
  it.each([
    ['2-3', 'row-column', { container: null, row: 2, column: 3 }],
    ['2/3', 'row-column', { container: null, row: 2, column: 3 }],
    ['R2C3', 'row-column', { container: null, row: 2, column: 3 }],
    ['row 2, col 3', 'row-column', { container: null, row: 2, column: 3 }],
    ['T1-2-3', 'container-row-column', { container: 'T1', row: 2, column: 3 }],
    ['north-2 2-3', 'container-row-column', { container: 'north-2', row: 2, column: 3 }],
    ['B3', 'letter row, number column', { container: null, row: 2, column: 3 }],
    ['B3', 'letter column, number row', { container: null, row: 3, column: 2 }],
    ['5', 'numbered along rows', { container: null, row: 2, column: 1 }],
    ['5', 'numbered along columns', { container: null, row: 2, column: 2 }],
    ['13', 'numbered along rows', null],
    ['0', 'numbered along rows', null],
    ['2', 'row-column', null],
  ] as const)('%s as %s', (text, form, place) => {
    expect(placeInWords(text, form, 'T1', known)).toEqual(place);
  });
});

describe('dates in digits', () => {
  it('tell their order by a number that is no month', () => {
    expect(orderOfDates(['05/10/2025', '20/10/2025'])).toBe('day first');
    expect(orderOfDates(['10/05/2025', '10/20/2025'])).toBe('month first');
    expect(orderOfDates(['05/10/2025'])).toBeNull();
    expect(orderOfDates(['20/10/2025', '10/20/2025'])).toBeNull();
  });
  it.each([
    ['2025-10-05', null, '2025-10-05'],
    ['2025-10-05 14:30', null, '2025-10-05'],
    ['5.10.2025', 'day first', '2025-10-05'],
    ['5/10/25', 'month first', '2025-05-10'],
    ['5/10/2025', null, 'two ways'],
    ['5/5/2025', null, '2025-05-05'],
    ['31/2/2025', 'day first', null],
    ['yesterday', null, null],
  ] as const)('%s, %s', (text, order, date) => {
    expect(dateOfWords(text, order)).toBe(date);
  });
});

it('columns are lettered as spreadsheets letter them, and back', () => {
  expect([0, 25, 26, 51, 52, 701, 702].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA']);
  for (const column of [0, 25, 26, 700, 701, 702, 16383])
    expect(columnOfLetters(columnLetters(column))).toBe(column);
  expect(columnOfLetters('7')).toBeNull();
});
