import { expect, test } from 'vitest';
import { beforeNumber } from '../../../src/compute/format/before-number.ts';

test('a name that ends with a number does not run into the one behind it', () => {
  expect(`${beforeNumber('Solution strength 1')} 461 g`).toBe('Solution strength 1: 461 g');
  expect(`${beforeNumber('Cobalt Wren')} 461 g`).toBe('Cobalt Wren 461 g');
});
