import { describe, expect, it } from 'vitest';
import { formatP } from '../../../src/compute/format/format-p.ts';

const written = (p: number) => formatP(p).replaceAll('\u00A0', ' ');

describe('formatP', () => {
  it.each([
    [0.0183, 'p = 0.018'],
    [0.0009999, 'p < 0.001'],
    [0, 'p < 0.001'],
    [0.001, 'p = 0.001'],
    [0.9995, 'p > 0.999'],
    [0.05, 'p = 0.050'],
  ])('writes %s as %s', (p, text) => {
    expect(written(p)).toBe(text);
  });

  it('prints more digits where three would read as the level itself', () => {
    expect(written(0.0496)).toBe('p = 0.0496');
    expect(written(0.0503)).toBe('p = 0.0503');
    expect(written(0.049999)).toBe('p = 0.049999');
  });

  it('refuses what is no probability', () => {
    expect(() => formatP(1.2)).toThrow('1.2');
    expect(() => formatP(Number.NaN)).toThrow('NaN');
  });
});
