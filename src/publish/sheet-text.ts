import type { FactSheet, SheetBlock, SheetInline } from '../model/fact-sheet.ts';

/** What a fact sheet's author wrote, without marks and without what components fill in, a text each paragraph. */
export function sheetTexts({ blocks }: FactSheet): string[] {
  return blocks.flatMap(blockTexts).filter((text) => text !== '');
}

function blockTexts(block: SheetBlock): string[] {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return [inlineText(block.children)];
    case 'list':
      return block.items.flatMap(({ children }) => children.flatMap(blockTexts));
    case 'table':
      return [block.head, ...block.rows].flat().map(({ children }) => inlineText(children));
    case 'quote':
    case 'component':
      return block.children.flatMap(blockTexts);
    case 'preformatted':
      return [block.text];
    case 'rule':
      return [];
  }
}

function inlineText(nodes: readonly SheetInline[]): string {
  const pieces = nodes.map((node) => {
    if (node.kind === 'break') return ' ';
    // What it shows is on the page; here its place is kept, so that the sentence reads as one.
    if (node.kind === 'component' && node.children.length === 0) return '…';
    return 'text' in node ? node.text : inlineText(node.children);
  });
  return pieces.join('').replace(/\s+/g, ' ').trim();
}
