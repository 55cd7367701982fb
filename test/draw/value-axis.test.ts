import { expect, test } from 'vitest';
import { fluidScale } from '../../src/draw/fluid.ts';
import { narrow } from '../../src/draw/grid-map.ts';
import { textWidth } from '../../src/draw/text-width.ts';
import { gridlines, valueAxes } from '../../src/draw/value-axis.ts';
import { everyElement, parseXml } from '../support/xml.ts';

const labels = (unit: string) =>
  everyElement(parseXml(`<svg>${valueAxes(fluidScale([20, 55], [13, 90]), 0, unit)}</svg>`))
    .filter(({ name }) => name === 'text')
    .map(({ text }) => text.replaceAll('\u00A0', ' '));

test('a unit as long as a word takes the room of the label before it', () => {
  expect(labels('[bu_us]/[acr_us]')).toEqual(['20', '25', '30', '35', '40', '45', '55 bu/acre']);
});

test('a short unit leaves every label', () => {
  expect(labels('m')[7]).toBe('55 m');
  expect(labels('m').slice(0, 8)).toEqual(['20', '25', '30', '35', '40', '45', '50', '55 m']);
});

test('the end labels stay within the drawing where that is narrowest', () => {
  for (const range of [
    [3, 97],
    [5, 91],
  ] as const) {
    const axes = valueAxes(fluidScale([12_000, 18_000], range), 0, 'g');
    const texts = everyElement(parseXml(`<svg>${axes}</svg>`)).filter(({ name }) => name === 'text');
    expect(texts.length).toBeGreaterThan(4);
    for (const { text, attributes } of texts) {
      const at = (narrow * Number(attributes['x']!.replace('%', ''))) / 100 + Number(attributes['dx'] ?? 0);
      expect(at - textWidth(text, 12) / 2).toBeGreaterThan(-0.01);
      expect(at + textWidth(text, 12) / 2).toBeLessThan(narrow + 0.01);
    }
  }
});

test('each unit has lines of its own at the ticks of its axis', () => {
  const scale = fluidScale([120, 180], [5, 91]);
  const root = parseXml(`<svg>${gridlines(scale, 0, 10, 'g')}${valueAxes(scale, 20, 'g')}</svg>`);
  const [metric, us] = [root.children[0]!, root.children[1]!];
  expect([metric, us].map(({ attributes }) => attributes['class'])).toEqual(['metric', 'when-chosen']);
  for (const [lines, axis] of [
    [metric, 'axis metric'],
    [us, 'axis us'],
  ] as const) {
    const ticks = root.children.find(({ attributes }) => attributes['class'] === axis)!.children;
    const places = ticks.filter(({ name }) => name === 'text').map(({ attributes }) => attributes['x']);
    expect(places.length).toBeGreaterThan(2);
    // None ends further above its axis than the metric ones do above theirs.
    const base = ticks.find(({ name }) => name === 'line')!.attributes['y1'];
    expect(Number(base) - Number(lines.children[0]!.attributes['y2'])).toBe(10);
    expect(lines.children.map(({ attributes }) => attributes['x1'])).toEqual(expect.arrayContaining(places));
  }
  expect(gridlines(scale, 0, 10, '%')).not.toContain('<g');
});
