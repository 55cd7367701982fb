import { expect, test } from 'vitest';
import { weighingTables, nutrientsTables } from '../../../src/compute/growing/nutrients-tables.ts';
import { ionIds } from '../../../src/compute/nutrients/ions.ts';
import type { Recipe } from '../../../src/compute/nutrients/recipe.ts';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';
import { conductivityTable } from '../../../src/compute/solution/conductivity-table.ts';
import { contentTables } from '../../../src/compute/solution/content-tables.ts';
import { digitsFor } from '../../../src/compute/solution/digits-for.ts';
import { litresInBoth, mixingTables } from '../../../src/compute/solution/mixing-tables.ts';
import { ionInWords, nutrientInWords } from '../../../src/compute/solution/nutrient-words.ts';
import { ratiosTable } from '../../../src/compute/solution/ratios-table.ts';
import type { PageTable } from '../../../src/compute/tables/page-table.ts';
import { inLanguage } from '../../../src/model/language.ts';
import '../../../src/model/messages.ts';
import { type Nutrient, nutrientNames } from '../../../src/model/nutrient-keys.ts';
import { blockTrial } from '../../support/example-trial.ts';

const recipe: Recipe = {
  water: { Ca: 20, Mg: 6 },
  salts: [
    { name: 'Base', grams_per_litre: 1, percent: { N: 5, P2O5: 11, K2O: 26, Mg: 3.1, S: 4 }, stock: 'B' },
    { name: 'Calcium nitrate', grams_per_litre: 0.66, percent: { N: 15.5, Ca: 19 }, stock: 'A' },
  ],
  stock_ratio: 100,
};

function row(table: PageTable | undefined, heading: string): unknown[] {
  const found = table?.rows.find((each) => each.heading === heading);
  return [...(found?.cells ?? ['no such row'])];
}

const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

test('what to weigh is printed in grams and ounces for the tank, and by the litre and the US gallon', () => {
  const [straight] = mixingTables(solutionOf(recipe), { litres: 50, stockLitres: 1 });
  expect(plain(straight!.caption)).toBe('Weighed straight into the tank, for 50 L (13.2 US gal) of solution');
  // 50 g are 1.764 oz; 1 g/L is 3.785411784 g or 0.1335 oz to the US gallon.
  expect(row(straight, 'Base')).toEqual([
    { metric: '50.0', us: '1.76' },
    { metric: '1.000', us: '0.134' },
  ]);
});

test('each stock is printed for 1 in N and for 1 plus N, with how much of it the tank takes', () => {
  const tables = mixingTables(solutionOf(recipe), { litres: 50, ratio: 100, stockLitres: 2 });
  expect(tables.map(({ caption }) => plain(caption))).toEqual([
    'Weighed straight into the tank, for 50 L (13.2 US gal) of solution',
    'Stock A, 2 L (67.6 US fl oz) of it',
    'Stock B, 2 L (67.6 US fl oz) of it',
  ]);
  // 0.66 g/L x 100 x 2 L = 132 g, and x 101 = 133.32 g
  expect(row(tables[1], 'Calcium nitrate')).toEqual([
    { metric: '132', us: '4.66' },
    { metric: '133', us: '4.70' },
  ]);
  expect(plain(tables[1]!.notes[0]!)).toMatch(/take 500 mL .*, 495 mL .* of it to 100 times/);
  expect(tables[0]!.notes).toEqual(['Either this or the stocks below, never both.']);
});

test('a salt that no stock holds is said to go into the tank beside the stocks', () => {
  const extra = { name: 'Epsom salt', formula: 'MgSO4.7H2O', grams_per_litre: 0.1 };
  const salts: Recipe['salts'] = [...recipe.salts!, extra];
  const [straight] = mixingTables(solutionOf({ ...recipe, salts }), {
    litres: 50,
    ratio: 100,
    stockLitres: 1,
  });
  expect(straight!.notes[0]).toContain('these still go straight into the tank: Epsom salt.');
});

test('contents are printed in mg, mmol and meq to the litre, and what no label tells is unknown, never 0', () => {
  const [main, traces, charges] = contentTables(solutionOf(recipe));
  // 0.66 x 190 + 20 = 145.4 mg/L; / 40.078 = 3.628 mmol/L; x 2 = 7.256 meq/L
  expect(row(main, 'Calcium, Ca')).toEqual(['145.4', '3.63', '20.0']);
  expect(row(charges, 'Ca²⁺')).toEqual(['7.26']);
  expect(row(main, 'of it as nitrate')).toEqual(['unknown', 'unknown', '0.0']);
  expect(row(traces, 'Iron, Fe')).toEqual(['unknown', 'unknown', '0.000']);
  expect(row(charges, 'Cations in all')).toEqual(['at least 15.82']);
});

test('a solution that surely holds no trace elements says so in a sentence', () => {
  const tables = contentTables(
    solutionOf({ salts: [{ name: 'KNO3', formula: 'KNO3', grams_per_litre: 1 }] }),
  );
  expect(tables).toHaveLength(2);
  expect(tables[0]!.notes[0]).toBe(
    'It holds no trace elements (Fe, Mn, Zn, Cu, B, Mo), which plants need too.',
  );
});

test('ratios are printed as growers say them', () => {
  const table = ratiosTable(solutionOf(recipe));
  // N 152.3, K 215.8
  expect(row(table, 'N : K by weight')).toEqual(['0.71 : 1']);
  expect(row(table, 'K : Ca : Mg, percent of their sum in meq/L')).toEqual(['35 : 46 : 19']);
  expect(row(table, 'NO₃ : H₂PO₄ : SO₄, percent of their sum in meq/L')).toEqual(['unknown']);
});

test('the estimates of conductivity are a range, with what was measured beside it', () => {
  const table = conductivityTable(solutionOf(recipe), [{ heading: 'T1', lowest: 1.7, highest: 1.7 }]);
  expect(row(table, 'Range of the estimates')).toEqual(['1.63 to 1.81']);
  expect(row(table, 'T1')).toEqual(['1.70']);
});

test('a trial shows the first reading of each container beside the estimates, and those of a strength by themselves', () => {
  const trial = blockTrial();
  const strength = { id: 'strength', name: 'Strength', levels: [{ id: '0.5' }, { id: '1' }] };
  const [first, second] = trial.metadata.containers;
  const metadata = {
    ...trial.metadata,
    nutrients: recipe,
    factors: [...trial.metadata.factors!, strength] as typeof trial.metadata.factors & object,
    containers: [
      { ...first, treatment: { strength: '0.5' } },
      { ...second!, treatment: { strength: '1' } },
    ] as typeof trial.metadata.containers,
  };
  const last = nutrientsTables({ ...trial, metadata }).at(-1)!;
  const headings = last.rows.map(({ heading }) => heading);
  expect(headings.slice(-4)).toEqual([
    'Range of the estimates',
    'Range of the estimates at strength 0.5',
    'Measured first in T1',
    'Measured first in T2',
  ]);
  expect(row(last, 'Measured first in T1')).toEqual(['1.50']);
});

test('a trial says what to weigh for the first container that gives a volume, and nothing without one', () => {
  const { metadata } = blockTrial();
  expect(weighingTables({ metadata: { ...metadata, nutrients: recipe } })).toEqual([]);
  const containers: typeof metadata.containers = [
    { ...metadata.containers[0], volume: { value: 70, unit: 'L' } },
  ];
  const tables = weighingTables({ metadata: { ...metadata, nutrients: recipe, containers } });
  expect(row(tables[0], 'Base')[0]).toEqual({ metric: '70.0', us: '2.47' });
});

test('digits follow the least number of a column, and volumes are said in the unit that suits them', () => {
  expect(digitsFor([100, 66])).toBe(1);
  expect(digitsFor([120, 0.4, 0, null])).toBe(3);
  expect(digitsFor([0, null])).toBe(1);
  expect(plain(litresInBoth(0.495).metric)).toBe('495 mL');
  expect(plain(litresInBoth(378.5411784).us!)).toBe('100 US gal');
  expect(plain(litresInBoth(1.25).metric)).toBe('1.25 L');
});

test('nutrients and tables are said in the language of the site, with its decimal sign', () => {
  const [main, traces] = inLanguage('es', () => contentTables(solutionOf(recipe)));
  expect(row(main, 'Calcio, Ca')).toEqual(['145,4', '3,63', '20,0']);
  expect(row(traces, 'Hierro, Fe')[0]).toBe('desconocido');
  const unknown = inLanguage('es', () => nutrientNames.map((name) => [name, nutrientInWords(name)]));
  expect(unknown.filter(([name, words]) => words === nutrientInWords(name as Nutrient))).toEqual([]);
  const charges = inLanguage('es', () => contentTables(solutionOf(recipe)).at(-1));
  expect(row(charges, 'Cationes en total')).toEqual(['al menos 15,82']);
});

test('ions are written with lowered figures and raised charges', () => {
  expect(ionIds.map(ionInWords).slice(0, 4)).toEqual(['K⁺', 'Ca²⁺', 'Mg²⁺', 'NH₄⁺']);
  expect([ionInWords('NO3'), ionInWords('SO4'), ionInWords('organic'), ionInWords('Fe3')]).toEqual([
    'NO₃⁻',
    'SO₄²⁻',
    'organic anions',
    'Fe³⁺',
  ]);
});
