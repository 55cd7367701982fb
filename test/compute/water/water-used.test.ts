import { expect, test } from 'vitest';
import { inOrder, levelFall } from '../../../src/compute/water/level-fall.ts';
import { waterUsed, type WaterOfContainer } from '../../../src/compute/water/water-used.ts';
import { yieldsOf } from '../../../src/compute/yields.ts';
import type { Container, Reading, Trial } from '../../../src/model/trial.ts';
import { blockTrial } from '../../support/example-trial.ts';

// Tank T1 of the example: inside 87 x 57 cm, so 4.959 L to the centimetre; levels 9, 7.4 (8 L added after it), 6.2 and
// 4.4 cm from 12 September to 20 October; nine plants set, cut on 20 October.
const trial = blockTrial();

function tank(change: (trial: Trial) => Trial = (same) => same): WaterOfContainer {
  const changed = change(trial);
  return waterUsed(changed, yieldsOf(changed, 'all'))[0]!;
}

const withTank = (extra: Partial<Container>) => (before: Trial) => ({
  ...before,
  metadata: {
    ...before.metadata,
    containers: [{ ...before.metadata.containers[0], ...extra }] as [Container],
  },
});

const litres = (value: number) => withTank({ volume: { value, unit: 'L' } });

/** The same harvest, cut ten days after the last reading. */
const cutLater = (before: Trial): Trial => ({
  ...before,
  harvest: before.harvest.map((record) => ({ ...record, date: '2025-10-30' })),
});

test('water used, its uncertainty of 2 mm at either end, and the share of a plant and a day agree with hand arithmetic', () => {
  const { used_L, uncertainty_L, days, plants, L_per_plant_day } = tank();
  expect(used_L).toBeCloseTo(4.959 * 4.6 + 8, 10);
  expect(uncertainty_L).toBeCloseTo(4.959 * 0.2 * Math.SQRT2, 10);
  expect([days, plants]).toEqual([38, 9]);
  expect(L_per_plant_day).toBeCloseTo(30.8114 / (9 * 38), 10);
});

test('for each kg it is divided by all that the container gave, dead plants as nothing', () => {
  // 152 + 139 + 166 + 118 + 171 + 131 + 147 + 158 g
  expect(tank().L_per_kg).toBeCloseTo(30.8114 / 1.182, 10);
});

test('what is left is the volume less what the level fell and with what was added last', () => {
  expect(tank(litres(50)).left_L).toBeCloseTo(50 - 4.959 * 4.6, 10);
  const topped = (before: Trial): Trial => ({
    ...litres(50)(before),
    readings: before.readings.map((reading) =>
      reading.date === '2025-10-20' ? { ...reading, added: 5 } : reading,
    ),
  });
  expect(tank(topped).left_L).toBeCloseTo(55 - 4.959 * 4.6, 10);
  expect(tank(topped).used_L).toBeCloseTo(30.8114, 10);
});

test('the first fill would have lasted, or not, without what was added', () => {
  expect(tank(litres(50)).fill_lasts).toBe(true);
  expect(tank(litres(25)).fill_lasts).toBe(false);
});

test('within the uncertainty of the readings it cannot be told', () => {
  const { fill_lasts, reason, left_L } = tank(litres(31));
  expect(fill_lasts).toBeNull();
  expect(left_L).toBeCloseTo(8.1886, 10);
  expect(reason).toContain('within the uncertainty');
});

test('days between the last reading and the cut need as much as the last two readings showed', () => {
  // From 10 to 20 October 1.8 cm, 8.9262 L in ten days; so 39.7376 L would be needed to 30 October.
  expect(tank((before) => litres(45)(cutLater(before))).fill_lasts).toBe(true);
  expect(tank((before) => litres(35)(cutLater(before))).fill_lasts).toBe(false);
  expect(tank((before) => litres(40)(cutLater(before))).fill_lasts).toBeNull();
});

test('a volume that does not fit the fall, or none, leaves what is left unknown with its reason', () => {
  expect(tank(litres(20))).toMatchObject({
    left_L: null,
    reason: 'The level fell by more than the volume that is given for the container.',
  });
  expect(tank()).toMatchObject({ left_L: null, reason: 'The volume of the container is not given.' });
});

test('a volume in US gallons is turned into litres', () => {
  expect(tank(withTank({ volume: { value: 10, unit: 'gal' } })).left_L).toBeCloseTo(
    37.85411784 - 4.959 * 4.6,
    10,
  );
});

test('a trial that is still growing has water and no kilograms, and no reason for lacking them', () => {
  const growing = litres(60)({ ...trial, harvest: [] });
  const [found] = waterUsed(growing, null);
  expect(found!.used_L).toBeCloseTo(30.8114, 10);
  expect(found!.L_per_kg).toBeNull();
  expect(found!.fill_lasts).toBe(true);
  expect(found!.reason).toBe('');
});

test('all levels of one day give a use and no use a day', () => {
  const oneDay = (before: Trial): Trial => ({
    ...before,
    readings: before.readings.map((reading, index) => ({ ...reading, date: '2025-09-12', line: index })),
  });
  const { used_L, L_per_plant_day, reason } = tank(oneDay);
  expect(used_L).toBeCloseTo(30.8114, 10);
  expect(L_per_plant_day).toBeNull();
  expect(reason).toContain('All levels were read on one day.');
});

test('a weight that is not known leaves the litres to the kg unknown', () => {
  const second = waterUsed(trial, yieldsOf(trial, 'all'))[1]!;
  expect(second.L_per_kg).toBeNull();
  expect(second.reason).toContain('The weight of the whole container is not known.');
});

test('rain counts before its row is read, what ran over is taken off, what was added counts after', () => {
  const row = (date: string, level: number | null, extra: Partial<Reading> = {}): Reading => ({
    ...trial.readings[0]!,
    date,
    level,
    ...extra,
  });
  const readings = inOrder([
    row('2025-09-20', 7, { rain: 4, overflow: 1, added: 50 }),
    row('2025-09-12', 9, { rain: 99, added: 2 }),
    row('2025-09-15', null, { rain: 3, added: 1 }),
  ]);
  const fall = levelFall(readings, 5)!;
  expect(fall).toMatchObject({ fallen: 10, added: 3, rain: 7, overflow: 1, addedSince: 50, used: 19 });
  expect(levelFall(readings.slice(0, 2), 5)).toBeNull();
});
