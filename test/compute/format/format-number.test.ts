import { describe, expect, it } from 'vitest';
import { formatNumber } from '../../../src/compute/format/format-number.ts';
import { formatPercent } from '../../../src/compute/format/format-percent.ts';

describe('formatNumber', () => {
  it('writes a real minus sign', () => {
    expect(formatNumber(-14.25, 1)).toBe('\u221214.3');
    expect(formatNumber(-14.25, 1)).not.toContain('-');
  });

  it('groups from five figures on by a narrow no-break space', () => {
    expect(formatNumber(1826, 0)).toBe('1826');
    expect(formatNumber(12345.678, 1)).toBe('12\u202F345.7');
    expect(formatNumber(1234567, 0)).toBe('1\u202F234\u202F567');
  });

  it('leaves digits after the point whole', () => {
    expect(formatNumber(0.1234567, 7)).toBe('0.1234567');
  });

  it('gives what rounds to zero no sign', () => {
    expect(formatNumber(-0.04, 1)).toBe('0.0');
    expect(formatNumber(-0, 0)).toBe('0');
    expect(formatNumber(0.04, 1, { plus: true })).toBe('0.0');
  });

  it('marks what is above zero where asked', () => {
    expect(formatNumber(14, 0, { plus: true })).toBe('+14');
    expect(formatNumber(-14, 0, { plus: true })).toBe('\u221214');
  });

  it('rounds to tens with negative digits', () => {
    expect(formatNumber(1826, -1)).toBe('1830');
    expect(formatNumber(4, -1)).toBe('0');
  });

  it('refuses what is not a number', () => {
    expect(() => formatNumber(Number.NaN, 1)).toThrow('finite number, not NaN');
    expect(() => formatNumber(Number.POSITIVE_INFINITY, 1)).toThrow('Infinity');
  });
});

describe('formatPercent', () => {
  it('writes percent as given', () => {
    expect(formatPercent(12.44)).toBe('12.4%');
    expect(formatPercent(-3, 0)).toBe('\u22123%');
  });
});
