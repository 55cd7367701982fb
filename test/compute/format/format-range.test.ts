import { expect, it } from 'vitest';
import { formatRange } from '../../../src/compute/format/format-range.ts';

const plain = (lower: number, upper: number, digits: number) => {
  const { metric, us } = formatRange(lower, upper, 'g', digits, { plus: true });
  return [metric, us].map((text) => text?.replaceAll('\u00A0', ' '));
};

it('writes both limits with the unit once', () => {
  expect(plain(140, 165, 0)).toEqual(['+140 to +165 g', '+4.9 to +5.8 oz']);
});

it('never rounds a limit to zero, which would hide on which side of zero it lies', () => {
  // -0.5 g are -0.0176 oz, 0.3 g are 0.0106 oz
  expect(plain(-0.5, 34.5, 0)).toEqual(['\u22121 to +35 g', '\u22120.02 to +1.22 oz']);
  expect(plain(0.3, 33.3, 0)).toEqual(['+0.3 to +33.3 g', '+0.01 to +1.17 oz']);
});

it('leaves a limit that is zero at zero', () => {
  expect(plain(0, 34, 0)[0]).toBe('0 to +34 g');
});
