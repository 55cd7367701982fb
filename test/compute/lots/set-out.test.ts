import { expect, test } from 'vitest';
import { drawLots } from '../../../src/compute/lots/draw-lots.ts';
import { layoutRows } from '../../../src/compute/lots/layout-rows.ts';
import { setOut } from '../../../src/compute/lots/set-out.ts';

function placesOf(...given: Parameters<typeof setOut>) {
  const out = setOut(...given);
  if ('reason' in out) throw new Error(out.reason);
  return out.places;
}

test('a border takes no part, and plots tile what is inside it', () => {
  const places = placesOf([{ id: 'T1', rows: 4, columns: 6, block: '1' }], {
    border: 1,
    plot: { rows: 2, columns: 2 },
  });
  expect(places).toHaveLength(8);
  expect(places[0]).toEqual({ container: 'T1', row: 2, column: 2, block: '1', plot: 'T1-1' });
  expect(places.map(({ plot }) => plot)).toEqual([
    'T1-1',
    'T1-1',
    'T1-2',
    'T1-2',
    'T1-1',
    'T1-1',
    'T1-2',
    'T1-2',
  ]);
});

test('a grid that holds no whole plots, or nothing but border, is refused with the reason', () => {
  expect(setOut([{ id: 'T1', rows: 3, columns: 4 }], { plot: { rows: 2, columns: 2 } })).toEqual({
    reason: 'plots of 2 by 2 do not fill the 3 by 4 positions of T1',
  });
  expect(setOut([{ id: 'T1', rows: 2, columns: 9 }], { border: 1 })).toEqual({
    reason: 'a border of 1 leaves nothing of the 2 by 9 positions of T1',
  });
});

test('the rows of layout.csv stand in the order of the containers, with the columns that are needed', () => {
  const containers = ['T2', 'T1'];
  const places = placesOf([
    { id: 'T1', rows: 1, columns: 2, block: 'one' },
    { id: 'T2', rows: 1, columns: 2, block: 'two' },
  ]);
  const out = drawLots(places, {
    arrangement: 'randomised blocks',
    seed: 5,
    containers,
    factors: [{ id: 'cultivar', levels: ['wren', 'egret'], unit: 'position' }],
  });
  if ('reason' in out) throw new Error(out.reason);
  const [head, ...rows] = layoutRows(out.treatments, containers, ['cultivar']);
  expect(head).toEqual(['container', 'row', 'column', 'block', 'cultivar']);
  expect(rows.map((row) => row.slice(0, 4).join())).toEqual([
    'T2,1,1,two',
    'T2,1,2,two',
    'T1,1,1,one',
    'T1,1,2,one',
  ]);
  expect(
    rows
      .slice(0, 2)
      .map((row) => row[4])
      .sort(),
  ).toEqual(['egret', 'wren']);
});
