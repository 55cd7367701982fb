import { describe, expect, it } from 'vitest';
import { spread } from '../../src/draw/spread.ts';

/** The gaps between the places, from the uppermost down. */
const gaps = (places: readonly number[]) => {
  const sorted = [...places].sort((a, b) => a - b);
  return sorted.slice(1).map((place, index) => place - sorted[index]!);
};

describe('labels moved apart', () => {
  it('stay where they are when none stands on another', () => {
    expect(spread([40, 0, 20])).toEqual([40, 0, 20]);
    expect(spread([])).toEqual([]);
  });

  it('move by as little as parts them, and only those that meet', () => {
    // Two at one place give way by half the room of a label each; the third is far away.
    expect(spread([50, 50, 90])).toEqual([43.5, 56.5, 90]);
  });

  it('keep within their limits wherever they have room', () => {
    // Ten labels need 117 of the 120 px between the limits: a few far apart, then all the others at the foot.
    const places = [0, 30, 60, 120, 120, 120, 120, 120, 120, 120];
    const moved = spread(places, 13, [0, 120]);
    expect(Math.min(...moved)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...moved)).toBeLessThanOrEqual(120);
    expect(Math.min(...gaps(moved))).toBeGreaterThanOrEqual(13 - 1e-9);
  });

  it('begin at the upper limit and stay apart where they have no room', () => {
    expect(spread([5, 5, 5], 13, [0, 20])).toEqual([0, 13, 26]);
  });
});
