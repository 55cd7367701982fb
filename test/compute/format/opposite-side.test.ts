import { describe, expect, it } from 'vitest';
import { compassPoint, oppositeSide } from '../../../src/compute/format/opposite-side.ts';

describe('oppositeSide', () => {
  it.each([
    ['north', 'south'],
    ['North side', 'south'],
    ['south-west', 'north-east'],
    ['southwest end', 'north-east'],
    ['wall side', 'opposite wall side'],
    ['northern light', 'opposite northern light'],
  ])('sets "%s" against "%s"', (landmark, side) => {
    expect(oppositeSide(landmark)).toBe(side);
  });

  it('counts the compass in eighths from north', () => {
    expect(['north', 'east', 'West', 'door'].map(compassPoint)).toEqual([0, 2, 6, null]);
  });
});
