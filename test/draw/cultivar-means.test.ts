import { describe, expect, test } from 'vitest';
import { plainText } from '../../src/compute/words/words.ts';
import { seasons } from '../../src/compare/seasons.ts';
import { drawCultivarMeans } from '../../src/draw/cultivar-means.ts';
import type { Seasons } from '../../src/model/generated/seasons.ts';
import { barley, trialsOf } from '../compare/barley-trials.ts';
import { valueReader } from '../support/read-axis.ts';
import { everyElement, parseDrawing, withClass, type XmlElement } from '../support/xml.ts';

const perPot = (cells: typeof barley, check?: string): Seasons =>
  seasons(trialsOf(cells, check)).find(({ measure }) => measure === 'per_pot')!;
const name = (cultivar: string) => cultivar;
const some = ['Trebi', 'Velvet', 'Svansota'];
const few = perPot(
  barley.filter(({ variety, trial }) => some.includes(variety) && /Waseca|Duluth/.test(trial)),
  'Svansota',
);
const plain = (text: string) => text.replaceAll('\u00A0', ' ').replaceAll('\u2212', '-');
const rowsOf = (root: XmlElement) => withClass(root, 'row');
const headingOf = (row: XmlElement) => withClass(row, 'heading')[0]!.text;

describe('the means of cultivars over trials', () => {
  const figure = drawCultivarMeans(few, name);
  const root = parseDrawing(figure.svg);
  const read = valueReader(root);

  test('draws the mean of every trial where the axis says it is', () => {
    for (const row of rowsOf(root)) {
      const cultivar = headingOf(row).replace(' (check)', '');
      const drawn = withClass(row, 'dot').map(({ attributes }) => read(attributes['cx']));
      const means = few.cells.filter((cell) => cell.cultivar === cultivar).map(({ mean }) => mean);
      expect(drawn).toHaveLength(4);
      drawn.forEach((value, index) => expect(Math.abs(value - means[index]!)).toBeLessThan(0.05));
    }
  });

  test('draws each adjusted mean and its own limits where the axis says they are', () => {
    for (const row of rowsOf(root)) {
      const mean = few.adjusted_means.find(
        ({ cultivar }) => cultivar === headingOf(row).replace(' (check)', ''),
      )!;
      const level = withClass(row, 'interval')[0]!.attributes;
      const diamond = everyElement(row).find(({ children }) =>
        children.some(({ attributes }) => attributes['class'] === 'estimate'),
      )!;
      expect(Math.abs(read(level['x1']) - mean.lower!)).toBeLessThan(0.05);
      expect(Math.abs(read(level['x2']) - mean.upper!)).toBeLessThan(0.05);
      expect(Math.abs(read(diamond.attributes['x']) - mean.mean)).toBeLessThan(0.05);
    }
  });

  test('names each dot by its season, the trial behind it where seasons are alike, and marks the check', () => {
    const text = plain(rowsOf(root)[0]!.text);
    for (const { id } of few.trials) expect(text).toContain(id);
    expect(root.text).toContain('Svansota (check)');
  });

  test('leaves dots open where the trial had no error of its own, and says so', () => {
    const dots = withClass(root, 'dot');
    expect(dots.every(({ attributes }) => attributes['class']!.includes('open'))).toBe(true);
    expect(plainText(figure.description)).toContain('Open dots');
    const replicated: Seasons = {
      ...few,
      trials: few.trials.map((trial) => ({ ...trial, replicated: true })),
    };
    const closed = drawCultivarMeans(replicated, name);
    expect(closed.svg).not.toContain('dot open');
    expect(plainText(closed.description)).not.toContain('Open dots');
  });

  test('sorts by mean, by name or by trials', () => {
    const order = (by?: 'mean' | 'name' | 'trials') =>
      rowsOf(parseDrawing(drawCultivarMeans(few, name, by === undefined ? {} : { order: by }).svg)).map(
        (row) => headingOf(row).replace(' (check)', ''),
      );
    const byMean = [...few.adjusted_means].sort((a, b) => b.mean - a.mean).map(({ cultivar }) => cultivar);
    expect(order()).toEqual(byMean);
    expect(order('name')).toEqual([...some].sort());
    expect(order('trials')).toEqual([...some].sort());
  });

  test('has each dot and each adjusted mean in its table', () => {
    expect(figure.table.rows).toHaveLength(few.cells.length + few.adjusted_means.length);
  });
});

test('of many trials a row labels the lowest and the highest only', () => {
  const whole = perPot(barley);
  const root = parseDrawing(drawCultivarMeans(whole, name).svg);
  for (const row of rowsOf(root)) {
    const own = whole.cells.filter(({ cultivar }) => cultivar === headingOf(row));
    const labelled = own.filter(({ trial }) => row.text.includes(trial)).map(({ mean }) => mean);
    const means = own.map(({ mean }) => mean);
    expect(labelled.sort((a, b) => a - b)).toEqual([Math.min(...means), Math.max(...means)]);
  }
});

test('sets that no trial links stand apart under headings, the largest first', () => {
  const parted = perPot(
    barley.filter(({ variety, trial }) =>
      trial.endsWith('1931') ? some.includes(variety) : ['Glabron', 'Peatland'].includes(variety),
    ),
  );
  const figure = drawCultivarMeans(parted, name);
  const root = parseDrawing(figure.svg);
  expect(withClass(root, 'aside').map(({ text }) => text)).toEqual([
    'Linked set 1 of 2',
    'Linked set 2 of 2',
  ]);
  expect(rowsOf(root).slice(0, 3).map(headingOf).sort()).toEqual([...some].sort());
});

test('a cultivar without an interval is drawn without one', () => {
  const one = perPot(barley.filter(({ trial }) => trial === 'Waseca 1931'));
  const figure = drawCultivarMeans(one, name);
  expect(withClass(parseDrawing(figure.svg), 'interval')).toHaveLength(0);
  expect(figure.svg).not.toContain('95% interval');
});

test('an axis never makes much of means that are all but alike', () => {
  const alike: Seasons = {
    ...few,
    cells: few.cells.map((cell, index) => ({ ...cell, mean: 128 + index / 100 })),
    adjusted_means: few.adjusted_means.map((each) => ({ ...each, mean: 128, lower: null, upper: null })),
  };
  const root = parseDrawing(drawCultivarMeans(alike, name).svg);
  const read = valueReader(root);
  expect(read('92%') - read('4%')).toBeGreaterThan(0.19 * 128);
});
