/** The layouts of many designs and seeds as text: what the same program must draw in Node and in a browser. */
import { allotSeedlings } from '../../../src/compute/lots/allot-seedlings.ts';
import { drawLots, type LotPlan } from '../../../src/compute/lots/draw-lots.ts';
import { layoutRows } from '../../../src/compute/lots/layout-rows.ts';
import { setOut } from '../../../src/compute/lots/set-out.ts';

const position = (id: string, ...levels: string[]) => ({ id, levels, unit: 'position' as const });
const blocks = (count: number, rows: number, columns: number) =>
  Array.from({ length: count }, (_, index) => ({
    id: `T${index + 1}`,
    rows,
    columns,
    block: String(index + 1),
  }));

type Design = [
  arrangement: LotPlan['arrangement'],
  grids: Parameters<typeof setOut>[0],
  how: Parameters<typeof setOut>[1],
  factors: LotPlan['factors'],
];

const designs: Design[] = [
  ['completely randomised', [{ id: 'T1', rows: 4, columns: 6 }], {}, [position('cultivar', 'a', 'b', 'c')]],
  [
    'completely randomised',
    [{ id: 'T1', rows: 6, columns: 8 }],
    { border: 1 },
    [position('cultivar', 'a', 'b')],
  ],
  [
    'randomised blocks',
    blocks(4, 4, 6),
    { plot: { rows: 2, columns: 2 } },
    [
      { id: 'cultivar', levels: ['a', 'b', 'c'], unit: 'plot' },
      { id: 'cover', levels: ['with', 'without'], unit: 'plot' },
    ],
  ],
  ...[2, 4, 5, 6, 7].map((size): Design => [
    'latin square',
    [{ id: 'T1', rows: size, columns: size }],
    {},
    [position('cultivar', ...'abcdefg'.slice(0, size))],
  ]),
  [
    'split plot',
    blocks(3, 2, 6).flatMap((grid) => [grid, { ...grid, id: `${grid.id}b` }]),
    { plot: { rows: 2, columns: 2 } },
    [
      { id: 'strength', levels: ['half', 'full'], unit: 'container' },
      { id: 'cultivar', levels: ['a', 'b', 'c'], unit: 'plot' },
    ],
  ],
];

/** One text for each design and seed. */
export function lotsOfManyDesigns(): string[] {
  const seeds = [0, 1, 2, 1935, 8812, 2 ** 31, 2 ** 32 - 1, 2 ** 32, 2 ** 53 - 1];
  return designs.flatMap(([arrangement, grids, how, factors]) => {
    const out = setOut(grids, how);
    if ('reason' in out) throw new Error(out.reason);
    const containers = grids.map(({ id }) => id);
    const sizes = out.places.map((_, index) => (index * 7919) % 101);
    return seeds.map((seed) => {
      const drawn = drawLots(out.places, { arrangement, seed, containers, factors });
      if ('reason' in drawn) throw new Error(drawn.reason);
      const layout = layoutRows(
        drawn.treatments,
        containers,
        factors.map(({ id }) => id),
      );
      const seedlings = seed < 2 ** 32 ? allotSeedlings(sizes, out.places, containers, seed) : null;
      return JSON.stringify({ arrangement, seed, layout, seedlings });
    });
  });
}
