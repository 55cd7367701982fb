import type { SheetBlock, SheetCell, SheetTable } from '../model/fact-sheet.ts';
import { componentOf } from './sheet-component.ts';
import { keptAsFootnote } from './sheet-footnotes.ts';
import { inlinesOf } from './sheet-inlines.ts';
import type { MarkdownNode } from './sheet-parser.ts';
import type { SheetReading } from './sheet-reading.ts';

/** Paragraphs, headings, lists and whatever else stands on lines of its own. */
export function blocksOf(nodes: readonly MarkdownNode[], reading: SheetReading): SheetBlock[] {
  return nodes.flatMap((node) => blockOf(node, reading));
}

function blockOf(node: MarkdownNode, reading: SheetReading): SheetBlock[] {
  const place = reading.placeOf(node);
  switch (node.type) {
    case 'paragraph':
      if (isCode(node, reading)) return [];
      return paragraphOf(node, reading);
    case 'heading':
      return [{ kind: 'heading', depth: node.depth, children: inlinesOf(node.children, reading), ...place }];
    case 'blockquote':
      return [{ kind: 'quote', children: within(node.children, reading), ...place }];
    case 'list': {
      const items = node.children.map((item) => {
        return { children: within(item.children, reading), ...reading.placeOf(item) };
      });
      return [{ kind: 'list', start: node.ordered === true ? (node.start ?? 1) : null, items, ...place }];
    }
    case 'table':
      return [tableOf(node, reading)];
    case 'code':
      return [{ kind: 'preformatted', text: node.value, ...place }];
    case 'thematicBreak':
      return [{ kind: 'rule', ...place }];
    case 'definition':
      keptAsFootnote(node.identifier, place, reading);
      return [];
    case 'mdxFlowExpression':
      reading.expression(node.value, place);
      return [];
    case 'mdxJsxFlowElement': {
      const component = componentOf(node, reading.source, reading.faults);
      const children = within(node.children, reading);
      return component === null ? [] : [{ kind: 'component', ...component, children, ...place }];
    }
    default:
      return [{ kind: 'paragraph', children: inlinesOf([node], reading), ...place }];
  }
}

type Paragraph = Extract<MarkdownNode, { type: 'paragraph' }>;
type InlineTag = Extract<MarkdownNode, { type: 'mdxJsxTextElement' }>;

function paragraphOf(node: Paragraph, reading: SheetReading): SheetBlock[] {
  const alone = aloneIn(node);
  if (alone !== null) return aloneOnItsLine(alone, reading);
  return [{ kind: 'paragraph', children: inlinesOf(node.children, reading), ...reading.placeOf(node) }];
}

/** The one component that a paragraph consists of; null where it holds anything else. */
function aloneIn({ children }: Paragraph): InlineTag | null {
  const said = children.filter((child) => child.type !== 'text' || child.value.trim() !== '');
  const [only, more] = said;
  return only?.type === 'mdxJsxTextElement' && more === undefined ? only : null;
}

/** A component with its text on one line stands on its own as one whose tags have lines of their own. */
function aloneOnItsLine(tag: InlineTag, reading: SheetReading): SheetBlock[] {
  const component = componentOf(tag, reading.source, reading.faults);
  const place = reading.placeOf(tag);
  const text = reading.deeper(tag.children, () => inlinesOf(tag.children, reading));
  if (component === null) return text.length === 0 ? [] : [{ kind: 'paragraph', children: text, ...place }];
  const first = tag.children[0];
  const children: SheetBlock[] =
    first === undefined ? [] : [{ kind: 'paragraph', children: text, ...reading.placeOf(first) }];
  return [{ kind: 'component', ...component, children, ...place }];
}

function within(nodes: readonly MarkdownNode[], reading: SheetReading): SheetBlock[] {
  return reading.deeper(nodes, () => blocksOf(nodes, reading));
}

/** True for a paragraph that MDX would take for code of a module, which is then a fault. */
function isCode(node: Paragraph, reading: SheetReading): boolean {
  const place = reading.placeOf(node);
  const [first] = node.children;
  if (place.column !== 1 || first?.type !== 'text') return false;
  const word = /^(import|export)(?=[\s*{"'(])/.exec(first.value)?.[1];
  if (word === undefined) return false;
  reading.faults.push({ kind: 'import', place, found: first.value.split('\n')[0] ?? word, detail: word });
  return true;
}

function tableOf(node: Extract<MarkdownNode, { type: 'table' }>, reading: SheetReading): SheetTable {
  const rows = node.children.map((row) => {
    return row.children.map((cell): SheetCell => {
      return { children: inlinesOf(cell.children, reading), ...reading.placeOf(cell) };
    });
  });
  const [head = [], ...body] = rows;
  const align = head.map((_, index) => node.align?.[index] ?? null);
  return { kind: 'table', align, head, rows: body, ...reading.placeOf(node) };
}
