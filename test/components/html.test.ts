import { expect, test } from 'vitest';
import { escapeHtml, figureTableHtml, tableHtml, textHtml, wordsHtml } from '../../src/components/html.ts';

test('text from a grower cannot become mark-up, in content or in an attribute', () => {
  const caption = `<img src=x onerror="alert('1')">&`;
  const html = tableHtml(
    { caption, columns: [{ heading: '<b>', numeric: false }], rows: [], notes: [] },
    'metric',
  );
  expect(html).not.toContain('<img');
  expect(html).not.toContain('<b>');
  expect(escapeHtml(caption)).toBe('&lt;img src=x onerror=&quot;alert(&#39;1&#39;)&quot;&gt;&amp;');
});

test('a quantity stands in both units, the site’s own first', () => {
  const weight = { metric: '150 g', us: '5.3 oz' };
  const bare = (html: string) => html.replace(/<[^>]+>/g, '');
  expect(bare(textHtml(weight, 'metric'))).toBe('150 g (5.3 oz)');
  expect(bare(textHtml(weight, 'us'))).toBe('5.3 oz (150 g)');
  expect(textHtml({ metric: '1.7 mS/cm', us: null }, 'us')).toBe('1.7 mS/cm');
  expect(bare(wordsHtml(['by ', weight, '.'], 'metric'))).toBe('by 150 g (5.3 oz).');
});

test('a row is headed by a th and a cell with a working is a link to it', () => {
  const html = tableHtml(
    {
      caption: 'Means',
      columns: [
        { heading: 'Treatment', numeric: false },
        { heading: 'Mean', unit: 'g', numeric: true },
      ],
      rows: [{ heading: 'Cobalt Wren', cells: [{ text: '131.0', working: 'working-1' }] }],
      notes: [],
    },
    'metric',
  );
  expect(html).toContain('<th scope="row">Cobalt Wren</th>');
  expect(html).toContain('<td class="number"><a href="#working-1">131.0</a></td>');
});

test('a figure’s table twin holds every row of it', () => {
  const columns = [
    { heading: 'Position', numeric: false },
    { heading: 'g', numeric: true },
  ];
  const html = figureTableHtml({
    caption: 'T1',
    columns,
    rows: [
      ['1 1', '150'],
      ['1 2', '<5'],
    ],
  });
  expect(html.match(/<tr>/g)).toHaveLength(3);
  expect(html).toContain('&lt;5');
});
