import { describe, expect, it } from 'vitest';
import { formatBare, formatQuantity } from '../../../src/compute/format/format-quantity.ts';
import { formatWeight } from '../../../src/compute/format/format-weight.ts';
import { unitName } from '../../../src/compute/format/unit-name.ts';
import { usUnit } from '../../../src/compute/format/us-unit.ts';

const plain = (both: { metric: string; us: string | null }) => ({
  metric: both.metric.replaceAll('\u00A0', ' '),
  us: both.us?.replaceAll('\u00A0', ' ') ?? null,
});

describe('quantities in both units', () => {
  // By hand from the exact factors: 150 / 28.349523125 = 5.2911; 3.42 * 0.2048161 = 0.70047;
  // 120 / 2.54 = 47.24; 70 / 3.785411784 = 18.492; 25 * 0.1198264 = 2.9957; 20 * 1.8 + 32 = 68.
  it.each([
    [150, 'g', 0, '150 g', '5.3 oz'],
    [152.34, 'g', 1, '152.3 g', '5.37 oz'],
    [3.42, 'kg/m2', 2, '3.42 kg/m²', '0.700 lb/ft²'],
    [120, 'cm', 0, '120 cm', '47 in'],
    [70, 'L', 0, '70 L', '18.5 US gal'],
    [25, 'L/kg', 0, '25 L/kg', '3.0 US gal/lb'],
    [20, 'Cel', 0, '20 °C', '68 °F'],
    [1.5, 'mS/cm', 1, '1.5 mS/cm', null],
    [4, '{score}', 0, '4', null],
  ])('writes %s %s with %s decimals', (value, unit, digits, metric, us) => {
    expect(plain(formatQuantity(value, unit, digits))).toEqual({ metric, us });
  });

  it('rounds the US number from the full value, not from the metric print', () => {
    // 14.4 g is 0.508 oz; from the printed 14 g it would be 0.494 oz, 0.5 in both; 15.6 g is 0.550 oz.
    expect(plain(formatWeight(15.6, 0))).toEqual({ metric: '16 g', us: '0.6 oz' });
    expect(plain(formatWeight(15.4, 0))).toEqual({ metric: '15 g', us: '0.5 oz' });
  });

  it('holds number and unit together', () => {
    expect(formatWeight(150, 0).metric).toBe('150\u00A0g');
  });

  it('writes numbers alone for headed columns', () => {
    expect(formatBare(-14, 'g', 0, { plus: true })).toEqual({ metric: '\u221214', us: '\u22120.5' });
  });

  it('uses the exact factors', () => {
    expect(usUnit('kg/m2')!.factor).toBeCloseTo(0.09290304 / 0.45359237, 15);
    expect(usUnit('L/kg')!.factor).toBeCloseTo(0.45359237 / 3.785411784, 15);
    expect(usUnit('__proto__')).toBeNull();
  });

  it('names the dimensionless codes by nothing', () => {
    expect(['m2', '1', '{score}', '{leaves}', 'g'].map(unitName)).toEqual(['m²', '', '', 'leaves', 'g']);
  });
});
