import { afterEach, expect, test } from 'vitest';
import { figureHtml } from '../../src/components/figure-html.ts';
import { formatQuantity } from '../../src/compute/format/format-quantity.ts';
import { showFirst } from '../../src/model/first-units.ts';

const figure = {
  id: 'weights',
  title: 'Weights',
  description: ['Kea & Weka ', formatQuantity(178, 'g', 0), '.'],
  svg: '<svg width="100%"></svg>',
  table: { caption: 'Weights', columns: [], rows: [] },
};
const captionOf = (html: string) =>
  /<figcaption>(.*)<\/figcaption>/.exec(html)?.[1]?.replaceAll('\u00A0', ' ');
const metric = '<span class="metric">178 g</span>';
const us = '<span class="us">6.3 oz</span>';
const [before, behind] = ['<span class="either"> (</span>', '<span class="either">)</span>'];

afterEach(() => {
  showFirst('metric');
});

test('a caption holds its quantities in both units, so that it follows the choice of the reader', () => {
  const words = '<strong>Weights.</strong> Kea &amp; Weka ';
  expect(captionOf(figureHtml(figure))).toBe(`${words}${metric}${before}${us}${behind}.`);
  showFirst('us');
  expect(captionOf(figureHtml(figure))).toBe(`${words}${us}${before}${metric}${behind}.`);
});
