import { describe, expect, test } from 'vitest';
import { checkTrial } from '../../src/check/check-trial.ts';
import { drawLots, type LotPlan } from '../../src/compute/lots/draw-lots.ts';
import { layoutRows } from '../../src/compute/lots/layout-rows.ts';
import { setOut } from '../../src/compute/lots/set-out.ts';
import { asBytes } from './good-folder.ts';

interface Case {
  name: string;
  arrangement: LotPlan['arrangement'];
  grids: Parameters<typeof setOut>[0];
  how?: Parameters<typeof setOut>[1];
  factors: LotPlan['factors'];
}

const four = ['wren', 'egret', 'plover', 'siskin'];
const blocks = ['1', '2', '3'].map((block) => ({ id: `T${block}`, rows: 2, columns: 4, block }));
const cases: Case[] = [
  {
    name: 'a completely randomised trial within a border',
    arrangement: 'completely randomised',
    grids: [{ id: 'T1', rows: 6, columns: 6 }],
    how: { border: 1 },
    factors: [{ id: 'cultivar', levels: four, unit: 'position' }],
  },
  {
    name: 'blocks of plots of two positions',
    arrangement: 'randomised blocks',
    grids: blocks,
    how: { plot: { rows: 2, columns: 1 } },
    factors: [{ id: 'cultivar', levels: four, unit: 'plot' }],
  },
  {
    name: 'a Latin square of plots',
    arrangement: 'latin square',
    grids: [{ id: 'T1', rows: 4, columns: 8 }],
    how: { plot: { rows: 1, columns: 2 } },
    factors: [{ id: 'cultivar', levels: four, unit: 'plot' }],
  },
  {
    name: 'a split plot of strengths in tanks and cultivars in positions',
    arrangement: 'split plot',
    grids: blocks.flatMap((grid) => [grid, { ...grid, id: `${grid.id}b` }]),
    factors: [
      { id: 'strength', levels: ['half', 'full'], unit: 'container' },
      { id: 'cultivar', levels: four, unit: 'position' },
    ],
  },
  {
    name: 'a split plot whose factor of whole tanks is named last',
    arrangement: 'split plot',
    grids: blocks.flatMap((grid) => [grid, { ...grid, id: `${grid.id}b` }]),
    factors: [
      { id: 'cultivar', levels: four, unit: 'position' },
      { id: 'strength', levels: ['half', 'full'], unit: 'container' },
    ],
  },
];

/** trial.yaml and layout.csv of a planned trial, drawn from the seed. */
function folder({ arrangement, grids, how, factors }: Case, seed: number): Map<string, string> {
  const out = setOut(grids, how);
  if ('reason' in out) throw new Error(out.reason);
  const containers = grids.map(({ id }) => id);
  const drawn = drawLots(out.places, { arrangement, seed, containers, factors });
  if ('reason' in drawn) throw new Error(drawn.reason);
  const rows = layoutRows(
    drawn.treatments,
    containers,
    factors.map(({ id }) => id),
  );
  const trial = {
    title: 'A trial that is planned',
    version: '0.1.0',
    status: 'planned',
    question: 'Which of the four does best here?',
    crop: { name: 'Lettuce' },
    season: { year: 2026, name: 'spring' },
    site: { name: 'Fernhollow', setting: 'rain shelter' },
    people: [{ name: 'Imke Farrant', part: 'grower' }],
    licence: 'CC0-1.0',
    factors: factors.map(({ id, levels }) => ({
      id,
      name: id,
      levels: levels.map((level) => ({ id: level, name: level })),
    })),
    design: {
      arrangement,
      allotted: factors.some(({ unit }) => unit === 'position') ? 'position' : factors.at(-1)!.unit,
      randomised: true,
      seed,
      lot: { method: 'lots-1' },
    },
    containers: grids.map(({ block, ...grid }) => ({ ...grid, kind: 'tank', ...(block ? { block } : {}) })),
    variables: [
      { id: 'fresh_weight', name: 'Fresh weight', of: 'plant', kind: 'measured', unit: 'g', resolution: 1 },
    ],
  };
  return new Map([
    ['trial.yaml', JSON.stringify(trial, null, 1)],
    ['layout.csv', `${rows.map((row) => row.join(',')).join('\n')}\n`],
  ]);
}

const problemsOf = (files: ReadonlyMap<string, string>) =>
  checkTrial('planned-trial', asBytes(files), { cultivars: null, today: '2026-01-15', prefix: '' }).problems;

describe.each(cases)('$name', (one) => {
  test('passes as its seed draws it, block columns and plots as the file has them', () => {
    for (const seed of [3, 8812, 2 ** 40]) expect(problemsOf(folder(one, seed))).toEqual([]);
  });

  test('is refused under another seed', () => {
    const files = folder(one, 8812);
    files.set('trial.yaml', files.get('trial.yaml')!.replace('8812', '8813'));
    expect(problemsOf(files).map(({ rule }) => rule)).toEqual(['lot-contradicted']);
  });

  test('passes under another seed where no method is named', () => {
    const files = folder(one, 8812);
    const text = files
      .get('trial.yaml')!
      .replace('8812', '8813')
      .replace(/,\s*"lot": \{[^}]*\}/, '');
    files.set('trial.yaml', text);
    expect(problemsOf(files)).toEqual([]);
  });
});

test('two treatments exchanged are found with the line and what the seed draws', () => {
  const files = folder(cases[0]!, 8812);
  const lines = files.get('layout.csv')!.split('\n');
  const other = lines.findIndex((line, index) => index > 1 && line.split(',')[3] !== lines[1]!.split(',')[3]);
  const [first, second] = [lines[1]!.split(','), lines[other]!.split(',')];
  lines[1] = [...first.slice(0, 3), second[3]].join();
  lines[other] = [...second.slice(0, 3), first[3]].join();
  files.set('layout.csv', lines.join('\n'));
  const [problem, ...more] = problemsOf(files);
  expect(more).toEqual([]);
  expect(problem).toMatchObject({
    rule: 'lot-contradicted',
    file: 'layout.csv',
    line: 2,
    expected: `cultivar ${first[3]}`,
  });
  expect(problem?.message).toContain('(2 positions differ of 16)');
});

test('rows of layout.csv in another order are the same layout', () => {
  const files = folder(cases[1]!, 8812);
  const [head, ...rows] = files.get('layout.csv')!.trimEnd().split('\n');
  files.set('layout.csv', `${[head, ...rows.reverse()].join('\n')}\n`);
  expect(problemsOf(files)).toEqual([]);
});
