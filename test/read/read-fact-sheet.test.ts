import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  placeInText,
  type SheetBlock,
  type SheetInline,
  type SheetText,
} from '../../src/model/fact-sheet.ts';
import { readFactSheet } from '../../src/read/read-fact-sheet.ts';

const read = (text: string) => readFactSheet(text, 'trials/x/factsheet.mdx');

/** Kinds and words of a tree, without its places. */
function outline(nodes: readonly (SheetBlock | SheetInline)[]): unknown[] {
  return nodes.map((node) => {
    if ('text' in node) return [node.kind, node.text];
    if (node.kind === 'component')
      return [
        node.name,
        Object.fromEntries(node.attributes.map(({ name, value }) => [name, value])),
        ...outline(node.children),
      ];
    if (node.kind === 'list')
      return [node.kind, node.start, ...node.items.map(({ children }) => outline(children))];
    if (node.kind === 'table')
      return [
        node.kind,
        ...[node.head, ...node.rows].map((row) => row.map(({ children }) => outline(children))),
      ];
    return 'children' in node ? [node.kind, ...outline(node.children)] : [node.kind];
  });
}

function textsOf(nodes: readonly (SheetBlock | SheetInline)[]): SheetText[] {
  return nodes.flatMap((node): SheetText[] => {
    if (node.kind === 'text') return [node];
    if (node.kind === 'list') return node.items.flatMap(({ children }) => textsOf(children));
    if (node.kind === 'table')
      return [node.head, ...node.rows].flat().flatMap(({ children }) => textsOf(children));
    return 'children' in node ? textsOf(node.children) : [];
  });
}

describe('readFactSheet', () => {
  it('reads Markdown with components into a tree of plain data', () => {
    const { sheet, faults } = read(
      '## Results of *ours*\n\nIt gave <Value of="mean" digits=\'0\' /> a **head**, see [how](/methods/).\n\n<PositionMap\n  container="T1"\n/>\n\n1. one\n2. two\n',
    );
    expect(faults).toEqual([]);
    expect(outline(sheet!.blocks)).toEqual([
      ['heading', ['text', 'Results of '], ['emphasis', ['text', 'ours']]],
      [
        'paragraph',
        ['text', 'It gave '],
        ['Value', { of: 'mean', digits: '0' }],
        ['text', ' a '],
        ['strong', ['text', 'head']],
        ['text', ', see '],
        ['link', ['text', 'how']],
        ['text', '.'],
      ],
      ['PositionMap', { container: 'T1' }],
      ['list', 1, [['paragraph', ['text', 'one']]], [['paragraph', ['text', 'two']]]],
    ]);
  });

  it('reads a table with a component in a cell', () => {
    const { sheet } = read('| a | b |\n| --- | ---: |\n| x | <Value of="n" /> |\n');
    expect(outline(sheet!.blocks)).toEqual([
      ['table', [[['text', 'a']], [['text', 'b']]], [[['text', 'x']], [['Value', { of: 'n' }]]]],
    ]);
    expect(sheet!.blocks[0]).toMatchObject({ align: [null, 'right'] });
  });

  it('takes a component with its text on one line as one on lines of its own', () => {
    const alone = outline(read('<Quoted>words</Quoted>\n').sheet!.blocks);
    expect(alone).toEqual([['Quoted', {}, ['paragraph', ['text', 'words']]]]);
    expect(outline(read('<Quoted>\nwords\n</Quoted>\n').sheet!.blocks)).toEqual(alone);
    expect(outline(read('She said <Quoted>words</Quoted>\n').sheet!.blocks)[0]).toContainEqual([
      'Quoted',
      {},
      ['text', 'words'],
    ]);
  });

  it('reads the front matter, with its places counted in the whole file', () => {
    const { sheet, yaml } = read('---\ntitle: A title\ntrials: [one-trial, two-trials]\n---\n\nText.\n');
    expect(sheet!.frontMatter).toEqual({ title: 'A title', trials: ['one-trial', 'two-trials'] });
    expect(sheet!.trials).toEqual([
      { id: 'one-trial', line: 3, column: 10 },
      { id: 'two-trials', line: 3, column: 21 },
    ]);
    expect(yaml!.place(['title'])).toEqual({ line: 2, column: 8 });
    expect(sheet!.blocks[0]).toMatchObject({ line: 6, column: 1 });
  });

  it('takes a line of --- that does not open the file for a rule', () => {
    expect(
      outline(read('Text.\n\n---\n\nMore.\n').sheet!.blocks).map((block) => (block as string[])[0]),
    ).toEqual(['paragraph', 'rule', 'paragraph']);
  });

  it.each([
    ['trials/x/factsheet.mdx', null],
    ['trials/x/factsheet.es.mdx', 'es'],
    ['fact-sheets/lettuce.pt-BR.mdx', 'pt-BR'],
    ['factsheet.mdx', null],
  ])('reads the language of %s off its name', (file, language) => {
    expect(readFactSheet('Text.', file).sheet!.language).toBe(language);
  });

  it('passes over a remark in braces, and says so of nothing else in them', () => {
    const { sheet, faults } = read('{/* to be written */}\n\nText {/* here too */} goes on.{}\n');
    expect(faults).toEqual([]);
    expect(textsOf(sheet!.blocks).map(({ text }) => text)).toEqual(['Text ', ' goes on.']);
  });

  it('takes import and export for words within a sentence', () => {
    const text = 'We import no seed.\nexport is for others.\n\nImport duties rose.\n\n- import of peat\n';
    expect(read(text).faults).toEqual([]);
  });

  it('keeps escaped signs and character references as the characters they stand for', () => {
    const { sheet, faults } = read('\\{not code\\} &lt;b&gt; \\<b\\> AT&amp;T 5 < 6\n');
    expect(faults).toEqual([]);
    expect(textsOf(sheet!.blocks).map(({ text }) => text)).toEqual(['{not code} <b> <b> AT&T 5 < 6']);
  });

  it('counts lines and columns past CRLF, tabs and characters of two units', () => {
    const { faults } = read('ü𝟏\r\n\r\n\tText 𝟏 {code}\r\n');
    expect(faults.map(({ place }) => place)).toEqual([{ line: 3, column: 9 }]);
  });

  it('tells where each word of a text stands, over several lines', () => {
    const source = 'First line\n  second line here,\nthird.\n\n> quoted\n> on two lines\n';
    const lines = source.split('\n');
    for (const text of textsOf(read(source).sheet!.blocks)) {
      for (const { 0: word, index } of text.text.matchAll(/\w+/g)) {
        const { line, column } = placeInText(text, index);
        expect(lines[line - 1]!.slice(column - 1, column - 1 + word.length)).toBe(word);
      }
    }
  });

  it('finishes whatever it is given, in a short time, with each fault at a place of the file', () => {
    const pieces = [
      ...'<>{}[]()*_`|-#!&\\/="\'\n\n\n  >',
      'Value',
      '<Value of="mean" />',
      '<Quoted>',
      '</Quoted>',
      '{1}',
      '![a](b)',
      '[a]: b',
      '- ',
      '1. ',
      '> ',
      '    ',
      '\t',
      'import a',
      '---\n',
      '| a |\n| - |\n',
      'ü𝟏',
      '&lt;',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 60 }), (parts) => {
        const text = parts.join('');
        const { faults, sheet } = read(text);
        const lines = text.split('\n');
        for (const { place } of faults) {
          expect(place.line).toBeLessThanOrEqual(lines.length);
          expect(place.column).toBeLessThanOrEqual([...lines[place.line - 1]!].length + 1);
        }
        // Without a tree there is a reason; a tree is plain data that JSON can hold.
        if (sheet === null) expect(faults).toHaveLength(1);
        else expect(JSON.parse(JSON.stringify(sheet))).toEqual(sheet);
      }),
      { numRuns: 1500 },
    );
  });

  it.each([
    ['quotations', '> '.repeat(25_000)],
    ['lists', '- '.repeat(25_000)],
    ['numbered lists', '1. '.repeat(16_000)],
    ['indented lists', Array.from({ length: 220 }, (_, depth) => `${' '.repeat(2 * depth)}- a`).join('\n')],
    ['brackets', '['.repeat(50_000)],
    ['emphasis', '*a _b '.repeat(8_000)],
    ['backticks', Array.from({ length: 300 }, (_, count) => '`'.repeat(count)).join(' ')],
    ['components', '<Quoted>'.repeat(6_000)],
    ['definitions', '[a]: b\n'.repeat(7_000)],
    ['wide tables', `${'|a'.repeat(7_000)}|\n${'|-'.repeat(7_000)}|\n`],
    ['long tables', `|a|b|\n|-|-|\n${'|a|b|\n'.repeat(4_900)}`],
    ['character references', '&amp'.repeat(12_000)],
  ])('is not held up by thirty thousand characters of %s', (_, text) => {
    const started = performance.now();
    read(text.slice(0, 30_000));
    expect(performance.now() - started).toBeLessThan(5000);
  });
});
