import { expect, test } from 'vitest';
import { solutionOf } from '../../../src/compute/nutrients/solution.ts';
import { atStrength, strengthOf } from '../../../src/compute/nutrients/strength-of.ts';
import type { Factor } from '../../../src/model/trial.ts';

const factor = (id: string, kind?: 'cultivar'): Factor => ({
  id,
  name: id,
  ...(kind ? { kind } : {}),
  levels: [{ id: '0.5' }, { id: '1' }],
});

test('a factor strength says how many times the recipe it was, and a cultivar changes nothing', () => {
  const factors = [factor('cultivar', 'cultivar'), factor('strength')];
  expect(strengthOf({ strength: '0.5' }, factors)).toBe(0.5);
  expect(strengthOf({}, [factor('cultivar', 'cultivar'), factor('plants_per_pot')])).toBe(1);
});

test('where a factor may have changed the recipe itself, or the level is not the whole container’s, nothing is known', () => {
  expect(strengthOf({ iron: '1' }, [factor('iron')])).toBeNull();
  expect(strengthOf(undefined, [factor('strength')])).toBeNull();
  expect(strengthOf({ strength: 'half' }, [factor('strength')])).toBeNull();
});

test('half strength halves what the salts bring and not what the water holds', () => {
  const { total } = solutionOf(
    atStrength(
      {
        water: { Ca: 20 },
        salts: [{ name: 'Calcium nitrate', grams_per_litre: 1, percent: { N: 15.5, Ca: 19 } }],
      },
      0.5,
    ),
  ).amounts;
  expect(total.Ca.value).toBeCloseTo(20 + 95, 10);
});
