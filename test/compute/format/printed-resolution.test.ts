import { expect, it } from 'vitest';
import { digitsOfValue } from '../../../src/compute/format/digits-of-value.ts';
import { printedResolution } from '../../../src/compute/format/printed-resolution.ts';
import type { Variable } from '../../../src/model/trial.ts';

const variable = (extra: Partial<Variable>): Variable => ({
  id: 'fresh_weight',
  name: 'Fresh weight',
  of: 'plant',
  kind: 'measured',
  ...extra,
});

it('turns the step of a scale in ounces into grams', () => {
  expect(printedResolution(variable({ unit: 'oz', resolution: 0.1 }))).toBeCloseTo(2.8349523125, 12);
  expect(digitsOfValue(printedResolution(variable({ unit: 'oz', resolution: 0.1 })))).toBe(0);
});

it('leaves grams and other units as they are, and says nothing where nothing is said', () => {
  expect(printedResolution(variable({ unit: 'g', resolution: 5 }))).toBe(5);
  expect(printedResolution(variable({ kind: 'scored', unit: '{score}', resolution: 1 }))).toBe(1);
  expect(printedResolution(variable({ unit: 'g' }))).toBeNull();
  expect(printedResolution(undefined)).toBeNull();
});
