/**
 * The six invented trials: which lots were drawn, the weights aimed at, and how the water fell.
 * What was measured never happened; see SOURCE.md beside this file.
 */
import { chance, shuffled } from './draw.ts';
import { readings, weights, type Unit, type Water, type Weight } from './invent.ts';

/** One trial's CSV files as rows of cells, headers first; layout is absent where containers have one treatment. */
export interface Files {
  layout?: string[][];
  harvest: string[][];
  readings?: string[][];
}

const grid = (rows: number, columns: number): { row: number; column: number }[] =>
  Array.from({ length: rows * columns }, (_, index) => ({
    row: 1 + Math.floor(index / columns),
    column: 1 + (index % columns),
  }));

const inWalkingOrder = (found: Weight[]): Weight[] =>
  [...found].sort((a, b) => a.container.localeCompare(b.container) || a.row - b.row || a.column - b.column);

const water = (header: string[], each: Water[], seed: number): string[][] => {
  const next = chance(seed);
  const rows = each.flatMap((one) => readings(one, next));
  return [header, ...rows.sort((a, b) => a[0]!.localeCompare(b[0]!) || a[1]!.localeCompare(b[1]!))];
};

const readingColumns = ['date', 'container', 'level', 'added', 'ec', 'ph', 'temperature', 'rain'];

/** One tank for each of four cultivars: put down as they came, no lots drawn; row 1 stands by the wall. */
function fourLettuces2024(): Files {
  const cultivars = ['cobalt-wren', 'russet-plover', 'slate-egret', 'umber-dotterel'];
  const units = cultivars.map((level, index): Unit => {
    const container = `T${String(index + 1)}`;
    return { container, block: 'all', level, positions: grid(3, 4) };
  });
  const means = { 'cobalt-wren': 148, 'russet-plover': 171, 'slate-egret': 159, 'umber-dotterel': 127 };
  const found = weights(
    units,
    means,
    { blocks: 0, units: 0, plants: 0.13, perRow: 0.05 },
    5,
    chance(20240527),
  );
  const days = [
    '2024-04-14',
    '2024-04-22',
    '2024-04-29',
    '2024-05-06',
    '2024-05-13',
    '2024-05-20',
    '2024-05-27',
  ];
  const tanks = units.map(({ container }, index): Water => {
    const rain = { '2024-04-22': 4.5, '2024-05-06': 7, '2024-05-20': 2.5 };
    const drunk = [37, 41, 39, 33][index]!;
    const temperature = [10, 11, 12.5, 12, 14, 15.5, 16];
    return {
      container,
      days,
      level: 9.7,
      area: 117 * 57,
      drunk,
      rain,
      ec: [1.7, 1.5],
      ph: [5.9, 6.7],
      temperature,
    };
  });
  return {
    harvest: [
      ['container', 'row', 'column', 'fresh_weight'],
      ...found.map((one) => [one.container, one.row, one.column, one.grams].map(String)),
    ],
    readings: water(readingColumns, tanks, 4141),
  };
}

/** Three cultivars in four tanks, each a block; a plot is one column of three. */
function lettuceBlocks(
  seed: number,
  chanceSeed: number,
  means: Record<string, number>,
  drinking: Water[],
): Files {
  const lots = chance(seed);
  const units = ['T1', 'T2', 'T3', 'T4'].flatMap((container) =>
    shuffled(Object.keys(means), lots).map((level, index): Unit => {
      const positions = [1, 2, 3].map((row) => ({ row, column: index + 1 }));
      return { container, block: container, level, positions };
    }),
  );
  const spread = { blocks: 0.04, units: 0.09, plants: 0.125 };
  const found = inWalkingOrder(weights(units, means, spread, 1, chance(chanceSeed)));
  return {
    layout: [
      ['container', 'row', 'column', 'cultivar', 'plot'],
      ...found.map((one) => [
        one.container,
        String(one.row),
        String(one.column),
        one.level,
        `${one.container}-${'abc'.charAt(one.column - 1)}`,
      ]),
    ],
    harvest: [
      ['container', 'row', 'column', 'plant', 'fresh_weight', 'status', 'remark'],
      ...found.map((one) => [one.container, one.row, one.column, 1, one.grams, '', ''].map(String)),
    ],
    readings: water(readingColumns, drinking, chanceSeed + 1),
  };
}

const fourTanks = (days: string[], drunk: number[], temperature: number[]): Water[] =>
  drunk.map((litres, index) => {
    const container = `T${String(index + 1)}`;
    const ph: [number, number] = [5.8, 6.6];
    return { container, days, level: 10.1, area: 87 * 57, drunk: litres, ec: [1.7, 1.6], ph, temperature };
  });

function autumnLettuce2025(): Files {
  const days = ['2025-09-12', '2025-09-19', '2025-09-26', '2025-10-03', '2025-10-10', '2025-10-20'];
  const drinking = fourTanks(days, [24, 22.5, 25, 21], [15.5, 14.5, 14, 12.5, 12, 10.5]);
  const means = { 'cobalt-wren': 131, 'russet-plover': 182, 'slate-egret': 144 };
  return lettuceBlocks(8812, 20251034, means, drinking);
}

function springLettuce2026(): Files {
  const days = [
    '2026-03-21',
    '2026-03-30',
    '2026-04-06',
    '2026-04-13',
    '2026-04-20',
    '2026-04-27',
    '2026-05-04',
  ];
  const drinking = fourTanks(days, [27, 29, 26, 27.5], [8.5, 9, 10.5, 11, 12.5, 12, 14]);
  const means = { 'cobalt-wren': 156, 'russet-plover': 153, 'slate-egret': 160 };
  return lettuceBlocks(4107, 20260513, means, drinking);
}

/** One, two or three plants a pot, twice each in four trays of six pots; pots weighed whole. */
function plantsPerPot2024(): Files {
  const lots = chance(2719);
  const places = grid(2, 3);
  const units = ['P1', 'P2', 'P3', 'P4'].flatMap((container) =>
    shuffled(['1', '1', '2', '2', '3', '3'], lots).map((level, index): Unit => ({
      container,
      block: container,
      level,
      positions: [places[index]!],
    })),
  );
  const spread = { blocks: 0.05, units: 0.09, plants: 0 };
  const found = weights(units, { 1: 78, 2: 118, 3: 138 }, spread, 1, chance(20241014));
  return {
    layout: [
      ['container', 'row', 'column', 'plants_per_pot', 'plants'],
      ...found.map((one) => [one.container, String(one.row), String(one.column), one.level, one.level]),
    ],
    harvest: [
      ['container', 'row', 'column', 'plant', 'fresh_weight', 'remark'],
      ...found.map((one) => [one.container, String(one.row), String(one.column), '', String(one.grams), '']),
    ],
  };
}

/** Three strengths in tanks A, B and C, drawn anew in each of three runs; container A2 is tank A in run 2. */
function solutionStrength2026(): Files {
  const lots = chance(3391);
  const runs: Record<string, string[]> = {
    1: ['2026-05-09', '2026-05-16', '2026-05-23', '2026-05-30', '2026-06-06', '2026-06-13'],
    2: ['2026-06-17', '2026-06-24', '2026-07-01', '2026-07-08', '2026-07-15', '2026-07-20'],
    3: ['2026-07-24', '2026-07-31', '2026-08-07', '2026-08-14', '2026-08-21', '2026-08-27'],
  };
  const units = Object.keys(runs).flatMap((block) =>
    shuffled(['0.5', '1', '1.5'], lots).map((level, index): Unit => ({
      container: `${'ABC'.charAt(index)}${block}`,
      block,
      level,
      positions: grid(2, 4),
    })),
  );
  const spread = { blocks: 0.07, units: 0.055, plants: 0.13 };
  const found = weights(units, { 0.5: 118, 1: 151, 1.5: 148 }, spread, 1, chance(20260827));
  const conductivity: Record<string, [number, number]> = { 0.5: [0.9, 0.7], 1: [1.7, 1.6], 1.5: [2.4, 2.6] };
  const tanks = units.map(({ container, block, level }): Water => {
    const drunk = { '0.5': 19.5, '1': 22, '1.5': 20.5 }[level]! + Number(block) - 2;
    const temperature = [14, 15, 16.5, 17, 17.5, 18].map((each) => each + 1.5 * (Number(block) - 1));
    const days = runs[block]!;
    return {
      container,
      days,
      level: 10.5,
      area: 77 * 37,
      drunk,
      ec: conductivity[level]!,
      ph: [5.8, 6.5],
      temperature,
    };
  });
  return {
    layout: [['container', 'strength'], ...units.map((unit) => [unit.container, unit.level])],
    harvest: [
      ['container', 'row', 'column', 'date', 'plant', 'fresh_weight', 'remark'],
      ...found.map((one) => {
        const date = runs[one.container.charAt(1)]!.at(-1)!;
        return [one.container, String(one.row), String(one.column), date, '1', String(one.grams), ''];
      }),
    ],
    readings: water(readingColumns, tanks, 3392),
  };
}

/** Two basils in eight trays of six, lots over all trays, cut twice. */
function sweetBasil2025(): Files {
  const lots = chance(6024);
  const cultivars = shuffled(
    [
      'fen-linnet',
      'fen-linnet',
      'fen-linnet',
      'fen-linnet',
      'gilt-siskin',
      'gilt-siskin',
      'gilt-siskin',
      'gilt-siskin',
    ],
    lots,
  );
  const units = cultivars.map((level, index): Unit => {
    return { container: `B${String(index + 1)}`, block: 'all', level, positions: grid(2, 3) };
  });
  const spread = { blocks: 0, units: 0.065, plants: 0.14 };
  const next = chance(20250804);
  const first = weights(units, { 'fen-linnet': 76, 'gilt-siskin': 88 }, spread, 1, next);
  const second = weights(
    units,
    { 'fen-linnet': 51, 'gilt-siskin': 43 },
    { ...spread, plants: 0.16 },
    1,
    next,
    first,
  );
  const days = [
    '2025-05-26',
    '2025-06-05',
    '2025-06-16',
    '2025-06-26',
    '2025-07-03',
    '2025-07-14',
    '2025-07-24',
    '2025-08-04',
  ];
  const trays = units.map(({ container }, index): Water => {
    const drunk = [19, 18.2, 18.8, 19.6, 17.9, 18.5, 19.2, 18.4][index]!;
    const added = { '2025-06-26': 4, '2025-07-14': 5 };
    const temperature = [18, 19.5, 20, 22, 23.5, 24, 22.5, 22];
    return {
      container,
      days,
      level: 11.8,
      area: 57 * 37,
      drunk,
      added,
      ec: [1.8, 1.5],
      ph: [5.9, 6.4],
      temperature,
    };
  });
  return {
    layout: [['container', 'cultivar'], ...units.map((unit) => [unit.container, unit.level])],
    harvest: [
      ['cut', 'date', 'container', 'row', 'column', 'plant', 'fresh_weight', 'status', 'remark'],
      ...[first, second].flatMap((found, index) =>
        found.map((one) => {
          const cut = [String(index + 1), ['2025-07-03', '2025-08-04'][index]!];
          return [...cut, one.container, String(one.row), String(one.column), '1', String(one.grams), '', ''];
        }),
      ),
    ],
    readings: water(readingColumns, trays, 6025),
  };
}

/** Every trial's files by the trial's id. */
export const trials: Record<string, () => Files> = {
  'four-lettuces-2024': fourLettuces2024,
  'plants-per-pot-2024': plantsPerPot2024,
  'sweet-basil-2025': sweetBasil2025,
  'autumn-lettuce-2025': autumnLettuce2025,
  'spring-lettuce-2026': springLettuce2026,
  'solution-strength-2026': solutionStrength2026,
};
