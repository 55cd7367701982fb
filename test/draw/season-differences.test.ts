import { describe, expect, test } from 'vitest';
import { seasons } from '../../src/compare/seasons.ts';
import { drawSeasonDifferences } from '../../src/draw/season-differences.ts';
import type { Seasons } from '../../src/model/generated/seasons.ts';
import { barley, trialsOf } from '../compare/barley-trials.ts';
import { valueReader } from '../support/read-axis.ts';
import { everyElement, parseDrawing, withClass } from '../support/xml.ts';

const perPot = (cells: typeof barley): Seasons =>
  seasons(trialsOf(cells)).find(({ measure }) => measure === 'per_pot')!;
const name = (cultivar: string) => cultivar;

describe('the differences of cultivars over trials', () => {
  const entry = perPot(barley.filter(({ variety }) => ['Trebi', 'Velvet', 'Svansota'].includes(variety)));
  const figure = drawSeasonDifferences(entry, name)!;
  const root = parseDrawing(figure.svg);
  const read = valueReader(root);

  test('draws the higher less the lower, the widest first, with both limits where the axis says', () => {
    const expected = entry.differences
      .map(({ a, b, estimate, lower, upper }) =>
        estimate < 0
          ? { pair: `${b} − ${a}`, values: [-upper!, -estimate, -lower!] }
          : { pair: `${a} − ${b}`, values: [lower!, estimate, upper!] },
      )
      .sort((a, b) => b.values[1]! - a.values[1]!);
    const rows = withClass(root, 'row');
    expect(rows.map((row) => withClass(row, 'heading')[0]!.text)).toEqual(expected.map(({ pair }) => pair));
    rows.forEach((row, index) => {
      const level = withClass(row, 'interval')[0]!.attributes;
      const mark = everyElement(row).find(({ children }) =>
        children.some(({ attributes }) => attributes['class'] === 'estimate'),
      )!;
      const seen = [read(level['x1']), read(mark.attributes['x']), read(level['x2'])];
      seen.forEach((value, at) => expect(Math.abs(value - expected[index]!.values[at]!)).toBeLessThan(0.05));
    });
  });

  test('has a table twin with every pair', () => {
    expect(figure.table.rows).toHaveLength(3);
  });
});

test('of ten barleys the 45 pairs are all drawn; of eleven cultivars the title says that some are not', () => {
  expect(drawSeasonDifferences(perPot(barley), name)!.title).not.toContain('largest');
  const entry = perPot(barley);
  const more: Seasons = {
    ...entry,
    differences: [...entry.differences, { ...entry.differences[0]!, estimate: 0.01 }],
  };
  const figure = drawSeasonDifferences(more, name)!;
  expect(figure.title).toContain('The 45 largest of 46 differences');
  expect(figure.table.rows).toHaveLength(45);
});

test('pairs of different linked sets are headed by their set', () => {
  const parted = perPot(
    barley.filter(({ variety, trial }) =>
      trial.endsWith('1931')
        ? ['Trebi', 'Velvet', 'Svansota'].includes(variety)
        : ['Glabron', 'Peatland'].includes(variety),
    ),
  );
  const root = parseDrawing(drawSeasonDifferences(parted, name)!.svg);
  expect(withClass(root, 'row')).toHaveLength(4);
  expect(withClass(root, 'aside').map(({ text }) => text)).toEqual([
    'Linked set 1 of 2',
    'Linked set 2 of 2',
  ]);
});

test('a single trial has no error across seasons, and so no figure', () => {
  expect(
    drawSeasonDifferences(perPot(barley.filter(({ trial }) => trial === 'Waseca 1931')), name),
  ).toBeNull();
});
