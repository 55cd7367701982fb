import { describe, expect, test } from 'vitest';
import { fluidScale } from '../../src/draw/fluid.ts';
import { stackedRows } from '../../src/draw/stacked-rows.ts';
import { element } from '../../src/draw/svg.ts';
import { everyElement, parseXml, withClass } from '../support/xml.ts';

/** A page of Letter between the margins that the style sheet gives it, in px of 1/96 inch. */
const page = (11 - (2 * 18) / 25.4) * 96;
const about = { id: 'many', title: 'Many rows', description: ['They are many.'], kind: 'differences' };
const scale = fluidScale([0, 10], [5, 91]);

/** The parts of a drawing of rows of these heights, which carry their place among all as their class. */
const partsOf = (heights: readonly number[]) => {
  const rows = heights.map((height, index) => (top: number) => ({
    svg: element('line', { class: `row-${String(index)}`, y1: top, y2: top + height }),
    height,
  }));
  const svg = stackedRows(about, rows, { scale, unit: 'g' });
  return parseXml(`<div>${svg}</div>`).children;
};
const rowsOf = (part: ReturnType<typeof partsOf>[number]) =>
  everyElement(part).filter(({ attributes }) => (attributes['class'] ?? '').startsWith('row-'));

describe('rows one below the other', () => {
  test('are one drawing where a page holds them', () => {
    const parts = partsOf(Array<number>(9).fill(78));
    expect(parts).toHaveLength(1);
    expect(rowsOf(parts[0]!)).toHaveLength(9);
  });

  test.each([
    ['many alike', Array<number>(45).fill(78)],
    ['some of them tall', [60, 300, 60, 60, 420, 60, 60, 300, 60, 380]],
    ['a few more than a page holds', Array<number>(11).fill(78)],
  ])('that no page holds are parts of whole rows, each with its axis: %s', (_, heights) => {
    const parts = partsOf(heights);
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.flatMap(rowsOf).map(({ attributes }) => attributes['class'])).toEqual(
      heights.map((__, index) => `row-${String(index)}`),
    );
    for (const part of parts) {
      const height = Number(part.attributes['height']);
      expect(height).toBeLessThan(page);
      expect(withClass(part, 'axis')).toHaveLength(2);
      let foot = 0;
      for (const { attributes } of rowsOf(part)) {
        expect(Number(attributes['y1'])).toBeGreaterThanOrEqual(foot);
        foot = Number(attributes['y2']);
      }
      expect(foot).toBeLessThan(height);
    }
  });

  test('in parts are each named, under ids of their own', () => {
    const parts = partsOf(Array<number>(20).fill(78));
    const named = parts.map((part) => part.children[0]!.text);
    expect(named[0]).toBe('Many rows');
    expect(named[1]).toBe(`Many rows, part 2 of ${String(parts.length)}`);
    const ids = parts.flatMap(everyElement).flatMap(({ attributes }) => attributes['id'] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { attributes, children } of parts) {
      const both = children.slice(0, 2).map(({ attributes: own }) => own['id']);
      expect(attributes['aria-labelledby']).toBe(both.join(' '));
    }
  });
});
