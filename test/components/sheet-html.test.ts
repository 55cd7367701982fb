import { describe, expect, it } from 'vitest';
import { sheetHeadings } from '../../src/sheets/sheet-headings.ts';
import { blocksHtml } from '../../src/components/sheet/sheet-html.ts';
import type { BlockComponent, InlineComponent, SheetBlock, SheetInline } from '../../src/model/fact-sheet.ts';
import { readFactSheet } from '../../src/read/read-fact-sheet.ts';
import type { Piece } from '../../src/sheets/piece.ts';

type Component = InlineComponent | BlockComponent;

function componentsOf(nodes: readonly (SheetBlock | SheetInline)[]): Component[] {
  return nodes.flatMap((node) => {
    const inner: Component[] = 'children' in node ? componentsOf(node.children) : [];
    return node.kind === 'component' ? [node, ...inner] : inner;
  });
}

/** A sheet as HTML, each of its components having become the given pieces. */
function html(text: string, pieces: readonly Piece[] = []): string {
  const { blocks } = readFactSheet(text, 'factsheet.mdx').sheet!;
  const made = new Map(pieces.length === 0 ? [] : componentsOf(blocks).map((each) => [each, pieces]));
  return blocksHtml(blocks, { pieces: made, headings: sheetHeadings(blocks), first: 'metric' });
}

describe('a sheet as HTML', () => {
  it('is what its Markdown says', () => {
    expect(html('## One\n\nA **b** *c* `d`\\\ne\n')).toBe(
      '<h2 id="one">One</h2><p>A <strong>b</strong> <em>c</em> <code>d</code><br>e</p>',
    );
    expect(html('- a\n- b\n')).toBe('<ul><li>a</li><li>b</li></ul>');
    expect(html('3. a\n4. b\n')).toBe('<ol start="3"><li>a</li><li>b</li></ol>');
    expect(html('> a\n\n---\n')).toBe('<blockquote><p>a</p></blockquote><hr>');
  });

  it('heads rows and columns of a table, and leaves an empty corner no heading', () => {
    const table = html('| | b |\n| --- | ---: |\n| x | 1 |\n');
    expect(table).toContain('<thead><tr><td></td><th scope="col" class="number">b</th></tr></thead>');
    expect(table).toContain('<tr><th scope="row">x</th><td class="number">1</td></tr>');
  });

  it('keeps whatever an author wrote as text', () => {
    const hostile = `\\<script\\>alert('1')\\</script\\> &lt;img src=x onerror="alert(1)"&gt; & "quoted"\n\n\`<b>\`\n\n~~~\n</pre><script>\n~~~\n`;
    const written = html(hostile);
    expect(written).not.toMatch(/<(script|img|b)\b/);
    expect(written).toContain('&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt;');
    expect(written).toContain('&lt;/pre&gt;&lt;script&gt;');
  });

  it('keeps what stands in an address within it', () => {
    expect(html(`[a](https://example.org/?a=1&b="onclick="x)`)).toBe(
      '<p><a href="https://example.org/?a=1&amp;b=&quot;onclick=&quot;x">a</a></p>',
    );
    expect(html('[a](/methods/) [b](#one)')).toBe('<p><a href="/methods/">a</a> <a href="#one">b</a></p>');
  });

  it('sets a number with its units within its link, and its interval behind', () => {
    const piece: Piece = {
      kind: 'words',
      words: [{ metric: '1 g', us: '0.04 oz' }],
      path: 'trials/a/#working-1',
      behind: [' (so)'],
    };
    expect(html('It gave <Value of="mean" />.', [piece])).toBe(
      '<p>It gave <a href="/trials/a/#working-1"><span class="metric">1 g</span><span class="either"> (</span>' +
        '<span class="us">0.04 oz</span><span class="either">)</span></a> (so).</p>',
    );
  });

  it('sets someone else’s words in quotation marks, or in a block of their own', () => {
    expect(html('He said <Quoted>*so*</Quoted>.', [{ kind: 'quoted' }])).toBe(
      '<p>He said <q><em>so</em></q>.</p>',
    );
    expect(html('<Quoted>so</Quoted>', [{ kind: 'quoted' }])).toBe('<blockquote><p>so</p></blockquote>');
  });

  it('sets an author’s own caution apart', () => {
    expect(html('<Caution>Mind the **step**.</Caution>', [{ kind: 'caution' }])).toBe(
      '<div class="cautions" role="note" aria-label="Caution"><p>Mind the <strong>step</strong>.</p></div>',
    );
  });

  it('leaves the name of a component that could not be filled in', () => {
    expect(html('It gave <Value of="mean" />.')).toBe('<p>It gave <mark>Value</mark>.</p>');
  });
});

describe('the headings of a sheet', () => {
  const levels = (text: string) =>
    sheetHeadings(readFactSheet(text, 'factsheet.mdx').sheet!.blocks).map(
      ({ level, id }) => `${String(level)} ${id}`,
    );

  it('begin below the page’s own, whichever the author began with', () => {
    expect(levels('# A\n\n## B\n\n# C\n')).toEqual(['2 a', '3 b', '2 c']);
    expect(levels('### A\n\n#### B\n')).toEqual(['2 a', '3 b']);
  });

  it('leave out no level on the way down', () => {
    expect(levels('## A\n\n##### B\n\n## C\n')).toEqual(['2 a', '3 b', '2 c']);
  });

  it('have ids of their own, whatever they say', () => {
    expect(levels('## Results\n\n## Results\n\n## ?\n\n## <Value of="n" />\n')).toEqual([
      '2 results',
      '2 results-2',
      '2 part',
      '2 part-2',
    ]);
  });
});
