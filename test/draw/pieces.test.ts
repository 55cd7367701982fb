import { describe, expect, it } from 'vitest';
import { dodge } from '../../src/draw/dodge.ts';
import { distinct, figureId } from '../../src/draw/figure-id.ts';
import { orientationOf } from '../../src/draw/orientation.ts';
import { residualSteps } from '../../src/draw/residual-steps.ts';
import { spread } from '../../src/draw/spread.ts';
import { shortNames } from '../../src/draw/short-names.ts';
import { element, escapeText, round } from '../../src/draw/svg.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { valueSteps } from '../../src/draw/value-steps.ts';
import { wrapText } from '../../src/draw/wrap-text.ts';
import { parseXml } from '../support/xml.ts';

describe('SVG text', () => {
  it('escapes what markup is made of and replaces what XML forbids', () => {
    expect(escapeText('a<b>&"\'')).toBe('a&lt;b&gt;&amp;&quot;&#39;');
    expect(escapeText('\u0000\u001B\uD800x')).toBe('\uFFFD\uFFFD\uFFFDx');
    expect(escapeText('🌱 naïve 莴苣')).toBe('🌱 naïve 莴苣');
    expect(parseXml(element('text', { class: '"><x' }, escapeText('</text>'))).text).toBe('</text>');
  });

  it('rounds coordinates to two decimals, without a negative zero', () => {
    expect([1.005, 2.675, -0.001, 3].map(round)).toEqual([1, 2.68, 0, 3]);
    expect(Object.is(round(-0.001), 0)).toBe(true);
  });

  it('leaves out attributes that are undefined', () => {
    expect(element('g', { a: undefined, b: 1.239 })).toBe('<g b="1.24"/>');
  });
});

describe('dodge', () => {
  it('lifts only what would touch', () => {
    expect(dodge([0, 3, 6, 30], 5)).toEqual([0, 1, 0, 0]);
  });

  it('stacks ties in the order of the list', () => {
    expect(dodge([2, 2, 2], 5)).toEqual([0, 1, 2]);
    expect(dodge([], 5)).toEqual([]);
  });
});

describe('value steps', () => {
  it('have round boundaries, at most the ramp, from its first step to its last', () => {
    const { boundaries, steps, stepOf } = valueSteps([62, 180, 117]);
    expect(boundaries).toEqual([80, 100, 120, 140, 160, 180]);
    expect(steps).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect([62, 79.9, 80, 180].map(stepOf)).toEqual([1, 1, 2, 7]);
  });

  it('are one in the middle where all values are alike', () => {
    expect(valueSteps([5, 5]).steps).toEqual([4]);
    expect(valueSteps([5, 5]).stepOf(5)).toBe(4);
  });

  it('never have more steps than the ramp, whatever the values', () => {
    for (let highest = 1; highest < 400; highest += 3) {
      const { steps, boundaries } = valueSteps([0.3, highest]);
      expect(steps.length).toBeLessThanOrEqual(7);
      expect(steps.length).toBe(boundaries.length + 1);
      expect(new Set(steps).size).toBe(steps.length);
    }
  });
});

describe('residual steps', () => {
  it('are even about zero', () => {
    const { boundaries, shadeOf } = residualSteps([-14.2, 9.8]);
    expect(boundaries).toEqual([-12.5, -7.5, -2.5, 2.5, 7.5, 12.5]);
    expect([-14, -7.5, -2.4, 2.5, 13].map(shadeOf)).toEqual([
      'below-3',
      'below-2',
      'even',
      'above-1',
      'above-3',
    ]);
  });

  it('let the largest residual reach the last shade, and not much less', () => {
    for (let largest = 0.13; largest < 500; largest *= 1.37) {
      const { shadeOf } = residualSteps([largest, -largest / 3]);
      expect(shadeOf(largest)).toBe('above-3');
      expect(shadeOf(-largest / 13)).toBe('even');
    }
  });

  it('are all even where nothing is left', () => {
    expect(residualSteps([0, 0]).shadeOf(0)).toBe('even');
    expect(residualSteps([]).shadeOf(0)).toBe('even');
  });
});

describe('short names', () => {
  it('are initials where those differ', () => {
    expect([...shortNames(['Cobalt Wren', 'Slate Egret', 'Cobalt Wren'])]).toEqual([
      ['Cobalt Wren', 'CW'],
      ['Slate Egret', 'SE'],
    ]);
    expect(shortNames(['Solution strength 0.5', 'Solution strength 1']).get('Solution strength 0.5')).toBe(
      'S0.5',
    );
  });

  it('always differ', () => {
    for (const names of [
      ['Cobalt Wren', 'Coral Weaver'],
      ['Aaaa one', 'Aaaa owl'],
      ['<>', '&&'],
      ['Abcd x', 'Abcd xy'],
    ]) {
      const short = [...shortNames(names).values()];
      expect(new Set(short).size).toBe(names.length);
      for (const each of short) expect(each).not.toBe('');
    }
  });
});

describe('figure ids', () => {
  it('are fit for addresses and stay apart', () => {
    expect(figureId('position map', 'Täñk #1')).toBe('position-map-ta-n-k-1');
    expect(distinct(['a', 'a', 'b', 'a'])).toEqual(['a', 'a-2', 'b', 'a-3']);
  });
});

describe('orientation', () => {
  const container = { id: 'T', kind: 'tank', rows: 1, columns: 1 } as const;

  it.each([
    ['north', 'west', false],
    ['north', 'east', true],
    ['south', 'east', false],
    ['south', 'west', true],
    ['west', 'north', true],
    ['north-east', 'south-east', true],
    ['wall side', 'north', false],
  ])('facing %s with column 1 at the %s', (row_1, column_1, reversed) => {
    expect(orientationOf({ ...container, row_1, column_1 }).columnsReversed).toBe(reversed);
  });

  it('invents no landmarks', () => {
    expect(orientationOf(container)).toEqual({
      top: null,
      bottom: null,
      left: null,
      right: null,
      columnsReversed: false,
    });
  });
});

describe('lines of text', () => {
  it('break at spaces, and within words only where they must', () => {
    expect(wrapText('one two three', 60, 13)).toEqual(['one two', 'three']);
    for (const line of wrapText('Rindfleischetikettierungsueberwachung', 60, 13)) {
      expect(textWidth(line, 13)).toBeLessThanOrEqual(60);
    }
    expect(wrapText('', 60, 13)).toEqual(['']);
  });

  it('are measured about as wide as the typeface sets them', () => {
    // Measured in a browser at weight 400, 100 px: digits but 1 and 3 are 55 to 65 wide, M 82, i 25.
    expect(textWidth('M', 100)).toBeCloseTo(84 * 1.03, 5);
    expect(textWidth('i', 100)).toBeLessThan(30);
    // A letter of the scripts that are set in squares is as wide as the type is high.
    for (const letter of '莴青レー「한，') expect(textWidth(letter, 100)).toBeGreaterThanOrEqual(100);
    // An accent that stands on a letter of its own takes no room.
    expect(textWidth('e\u0301', 100)).toBe(textWidth('e', 100));
  });
});

describe('labels at the ends of lines', () => {
  it('are moved apart and keep their order', () => {
    const moved = spread([50, 52, 51]);
    const sorted = [...moved].sort((a, b) => a - b);
    expect(sorted[1]! - sorted[0]!).toBeGreaterThanOrEqual(12.9);
    expect(sorted[2]! - sorted[1]!).toBeGreaterThanOrEqual(12.9);
    expect(moved[0]!).toBeLessThan(moved[2]!);
    expect(spread([])).toEqual([]);
    expect(spread([99, 99, 100], 13, [0, 100])).toEqual([74, 87, 100]);
    expect(spread([0, 1], 13, [0, 100])).toEqual([0, 13]);
  });
});
