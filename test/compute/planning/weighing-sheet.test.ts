import { describe, expect, it } from 'vitest';
import { levelNames } from '../../../src/compute/format/level-names.ts';
import { walkingOrder } from '../../../src/compute/planning/walking-order.ts';
import { weighingSheets } from '../../../src/compute/planning/weighing-sheet.ts';
import { trialOf } from '../../support/trial-of.ts';

const grid = trialOf(
  [
    [2, 1],
    [1, 2],
    [1, 1],
    [2, 2],
    [2, 2],
  ].map(([row, column]) => ({
    container: 'T1',
    row: row!,
    column: column!,
    treatment: { cultivar: row === 1 ? 'wren' : 'egret' },
    weight: 100,
  })),
);

const places = (positions: readonly { row: number; column: number }[]) =>
  positions.map(({ row, column }) => `${row} ${column}`);

describe('walkingOrder', () => {
  it('goes row by row from column 1 on', () => {
    expect(places(walkingOrder(grid.positions, 'row by row'))).toEqual(['1 1', '1 2', '2 1', '2 2']);
  });

  it('comes back along every second row, if so asked', () => {
    expect(places(walkingOrder(grid.positions, 'there and back'))).toEqual(['1 1', '1 2', '2 2', '2 1']);
  });
});

describe('weighingSheets', () => {
  it('has a line for each plant that was set, numbered in the order in which they are walked', () => {
    const [sheet] = weighingSheets(grid, levelNames(grid));
    expect(sheet?.severalPlants).toBe(true);
    expect(sheet?.lines).toEqual([
      { number: 1, row: 1, column: 1, plant: 1, treatment: 'Wren' },
      { number: 2, row: 1, column: 2, plant: 1, treatment: 'Wren' },
      { number: 3, row: 2, column: 1, plant: 1, treatment: 'Egret' },
      { number: 4, row: 2, column: 2, plant: 1, treatment: 'Egret' },
      { number: 5, row: 2, column: 2, plant: 2, treatment: 'Egret' },
    ]);
  });

  it('has a line for each pot where pots are weighed whole', () => {
    const [primary] = grid.metadata.variables;
    const whole = {
      ...grid,
      metadata: { ...grid.metadata, variables: [{ ...primary, of: 'pot' as const }] },
    } satisfies typeof grid;
    const [sheet] = weighingSheets(whole, levelNames(whole));
    expect(sheet?.severalPlants).toBe(false);
    expect(sheet?.lines.map(({ plant }) => plant)).toEqual([null, null, null, null]);
  });

  it('is missing for a container in which nothing stands', () => {
    const [first] = grid.metadata.containers;
    const more = {
      ...grid,
      metadata: { ...grid.metadata, containers: [first, { ...first, id: 'T2' }] },
    } satisfies typeof grid;
    expect(weighingSheets(more, levelNames(more)).map(({ container }) => container.id)).toEqual(['T1']);
  });
});
