import { expect, test } from 'vitest';
import { plainText } from '../../src/compute/words/words.ts';
import { seasons } from '../../src/compare/seasons.ts';
import { drawSteadinessPlots } from '../../src/draw/steadiness-plots.ts';
import type { Seasons } from '../../src/model/generated/seasons.ts';
import { barley, trialsOf } from '../compare/barley-trials.ts';
import { valueReader } from '../support/read-axis.ts';
import { parseXml, withClass } from '../support/xml.ts';

const perPot = (cells: typeof barley): Seasons =>
  seasons(trialsOf(cells)).find(({ measure }) => measure === 'per_pot')!;
const name = (cultivar: string) => cultivar;
const entry = perPot(barley);
const figures = drawSteadinessPlots(entry, name, { id: 'barley' });

test('one plot a cultivar, the slopes that depart the most from the others first', () => {
  const departures = [...entry.stability]
    .sort((a, b) => Math.abs(b.regression_slope! - 1) - Math.abs(a.regression_slope! - 1))
    .map(({ cultivar }) => cultivar);
  expect(figures.map(({ title }) => title.replace(' in poor and good trials', ''))).toEqual(departures);
  expect(new Set(figures.map(({ id }) => id)).size).toBe(10);
});

test("each dot stands at its trial's mean, as far above or below as the cultivar was", () => {
  const figure = figures.find(({ title }) => title.startsWith('Trebi'))!;
  const root = parseXml(figure.svg);
  const along = valueReader(root);
  const zero = Number(withClass(root, 'zero')[0]!.attributes['y1']);
  const dots = withClass(root, 'dot').map(({ attributes }) => ({
    x: along(attributes['cx']),
    above: zero - Number(attributes['cy']),
  }));
  const complete = entry.trials.map(({ id }) => {
    const ofTrial = entry.cells.filter(({ trial }) => trial === id).map(({ mean }) => mean);
    const x = ofTrial.reduce((total, mean) => total + mean, 0) / ofTrial.length;
    const own = entry.cells.find(({ cultivar, trial }) => cultivar === 'Trebi' && trial === id)!.mean;
    return { x, y: own - x };
  });
  // The table is complete, so a trial's adjusted mean is its plain one.
  expect(dots).toHaveLength(12);
  const scale = dots[0]!.above / complete[0]!.y;
  dots.forEach(({ x, above }, index) => {
    expect(Math.abs(x - complete[index]!.x)).toBeLessThan(0.05);
    expect(Math.abs(above / scale - complete[index]!.y)).toBeLessThan(0.1);
  });
});

test('says the slope, and lists every trial from the poorest to the best', () => {
  const { stability } = entry;
  const slope = stability.find(({ cultivar }) => cultivar === 'Trebi')!.regression_slope!;
  const figure = figures.find(({ title }) => title.startsWith('Trebi'))!;
  expect(plainText(figure.description).replace('\u2212', '-')).toContain((slope - 1).toFixed(2));
  const means = figure.table.rows.map((row) => Number(row[1]));
  expect(means).toHaveLength(12);
  expect(means).toEqual([...means].sort((a, b) => a - b));
});

test('nothing is drawn where steadiness cannot be judged', () => {
  expect(drawSteadinessPlots(perPot(barley.filter(({ trial }) => /Waseca/.test(trial))), name)).toEqual([]);
});
