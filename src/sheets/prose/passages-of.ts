import type { SheetBlock, SheetInline, SheetPlace, SheetTable, SheetText } from '../../model/fact-sheet.ts';
import { placeInText } from '../../model/fact-sheet.ts';
import { held, type HeldComponent, type Passage } from './passage.ts';

/**
 * The author's own words in a sheet, in their order. What is quoted (between Quoted tags, or as a block
 * quotation) is someone else's and is left out; a component leaves its mark in the text.
 */
export function passagesOf(blocks: readonly SheetBlock[]): Passage[] {
  return blocks.flatMap(passagesOfBlock);
}

function passagesOfBlock(block: SheetBlock): Passage[] {
  switch (block.kind) {
    case 'heading':
      return [passageOf('heading', [block.children])];
    case 'paragraph':
      return [passageOf('text', [block.children])];
    case 'list':
      return block.items.flatMap((item) => passagesOf(item.children));
    case 'table':
      return rowsOf(block);
    case 'component':
      return [...captionOf(block), ...(block.name === 'Quoted' ? [] : passagesOf(block.children))];
    case 'preformatted':
      return block.text.split('\n').map((line, index) => plain(line, block.line + index + 1));
    case 'quote':
    case 'rule':
      return [];
  }
}

/** A caption that an attribute gives is printed like any other words. */
function captionOf(block: Extract<SheetBlock, { kind: 'component' }>): Passage[] {
  const caption = block.attributes.find(({ name }) => name === 'caption');
  if (caption === undefined) return [];
  const place = { line: caption.line, column: caption.column };
  return [{ kind: 'text', text: inPlainWidth(caption.value), place: () => place, components: [] }];
}

function plain(text: string, line: number): Passage {
  const place = (index: number): SheetPlace => ({ line, column: index + 1 });
  return { kind: 'row', text: inPlainWidth(text), place, components: [] };
}

const between = ' | ';

function rowsOf({ head, rows }: SheetTable): Passage[] {
  const headings = head.map(({ children }) => passageOf('row', [children]).text);
  return [head, ...rows].map((row, at) => {
    const passage = passageOf(
      'row',
      row.map(({ children }) => children),
    );
    let index = 0;
    const cells = row.map(({ children }, column) => {
      const { length } = passageOf('row', [children]).text;
      const cell = { heading: headings[column] ?? '', index, length };
      index += length + between.length;
      return cell;
    });
    return at === 0 ? passage : { ...passage, cells };
  });
}

/** Line feeds as spaces, and the full-width signs of some keyboards as those that they stand for, one for one. */
export function inPlainWidth(text: string): string {
  return text
    .replaceAll(/[\n\u3000]/g, ' ')
    .replaceAll(/[\uff01-\uff5e]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0));
}

interface Part {
  index: number;
  node: SheetText | null;
  place: SheetPlace;
}

function passageOf(kind: Passage['kind'], lines: readonly (readonly SheetInline[])[]): Passage {
  const parts: Part[] = [];
  const components: HeldComponent[] = [];
  let text = '';
  const add = (piece: string, node: SheetText | null, place: SheetPlace): void => {
    parts.push({ index: text.length, node, place });
    text += piece;
  };
  const walk = (nodes: readonly SheetInline[]): void => {
    for (const node of nodes) {
      if (node.kind === 'text') add(inPlainWidth(node.text), node, node);
      else if (node.kind === 'code') add(node.text, null, node);
      else if (node.kind === 'break') add(' ', null, node);
      else if (node.kind === 'component') {
        components.push({ index: text.length, component: node });
        add(held, null, node);
      } else walk(node.children);
    }
  };
  for (const [index, nodes] of lines.entries()) {
    if (index > 0) add(between, null, nodes[0] ?? parts.at(-1)?.place ?? { line: 1, column: 1 });
    walk(nodes);
  }
  return { kind, text, components, place: (index) => placeAmong(parts, index) };
}

function placeAmong(parts: readonly Part[], index: number): SheetPlace {
  const part = parts.findLast((each) => each.index <= index) ?? parts[0];
  if (part === undefined) return { line: 1, column: 1 };
  if (part.node !== null) return placeInText(part.node, index - part.index);
  return { line: part.place.line, column: part.place.column };
}
