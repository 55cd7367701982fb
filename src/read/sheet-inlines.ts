import type { SheetInline, SheetText } from '../model/fact-sheet.ts';
import { componentOf } from './sheet-component.ts';
import { footnotesIn, keptAsFootnote } from './sheet-footnotes.ts';
import type { MarkdownNode } from './sheet-parser.ts';
import type { SheetReading } from './sheet-reading.ts';
import { firstUnseen } from './unseen.ts';

/** Running text with what is marked in it. What may not stand in a fact sheet becomes a fault and no node. */
export function inlinesOf(nodes: readonly MarkdownNode[], reading: SheetReading): SheetInline[] {
  return nodes.flatMap((node) => inlineOf(node, reading));
}

function inlineOf(node: MarkdownNode, reading: SheetReading): SheetInline[] {
  const place = reading.placeOf(node);
  switch (node.type) {
    case 'text':
      return [textOf(node.value, place, reading)];
    case 'inlineCode':
      return [{ kind: 'code', text: node.value, ...place }];
    case 'break':
      return [{ kind: 'break', ...place }];
    case 'emphasis':
    case 'strong':
      return [{ kind: node.type, children: within(node.children, reading), ...place }];
    case 'link':
      return linkOf(node.url, node, reading);
    case 'linkReference':
      if (keptAsFootnote(node.identifier, place, reading)) return [];
      return linkOf(reading.definitions.get(node.identifier) ?? '', node, reading);
    case 'image':
    case 'imageReference':
      reading.faults.push({ kind: 'image', place, found: node.alt ?? '', detail: '' });
      return [];
    case 'mdxTextExpression':
    case 'mdxFlowExpression':
      reading.expression(node.value, place);
      return [];
    case 'mdxJsxTextElement': {
      const component = componentOf(node, reading.source, reading.faults);
      const children = within(node.children, reading);
      return component === null ? [] : [{ kind: 'component', ...component, children, ...place }];
    }
    default:
      // Nothing else is made by the parser; were it to, it would be refused.
      reading.faults.push({ kind: 'syntax', place, found: node.type, detail: 'not part of a fact sheet' });
      return [];
  }
}

function within(nodes: readonly MarkdownNode[], reading: SheetReading): SheetInline[] {
  return reading.deeper(nodes, () => inlinesOf(nodes, reading));
}

function textOf(text: string, place: { line: number; column: number }, reading: SheetReading): SheetText {
  // A character reference makes one that does not stand in the source; the first of a sheet is enough.
  const hidden = reading.faults.some(({ kind }) => kind === 'unseen') ? null : firstUnseen(text);
  if (hidden !== null) reading.faults.push({ kind: 'unseen', place, found: hidden.found, detail: '' });
  const rest = text.split('\n').slice(1);
  const columns = rest.map((piece, index) => reading.source.columnOf(place.line + index + 1, piece));
  const made: SheetText = { kind: 'text', text, columns: [place.column, ...columns], ...place };
  footnotesIn(made, reading);
  return made;
}

/** Addresses that a reader may be led to. One that names no protocol is of this site and begins with a slash. */
function isSafe(address: string): boolean {
  if (/[\s\\\p{Cc}\p{Cf}]/u.test(address)) return false;
  if (!/^(https?:\/\/[^/]|mailto:[^?]+@|#.|\/(?!\/))/i.test(address)) return false;
  return !/^http/i.test(address) || isWhole(address);
}

/** An address that a browser could follow, and that hands out no name and password. */
function isWhole(address: string): boolean {
  if (!URL.canParse(address)) return false;
  const { username, password } = new URL(address);
  return username === '' && password === '';
}

function linkOf(
  to: string,
  node: MarkdownNode & { children: readonly MarkdownNode[] },
  reading: SheetReading,
): SheetInline[] {
  const place = reading.placeOf(node);
  const children = within(node.children, reading);
  const worded = children.some((child) => child.kind !== 'text' || child.text.trim() !== '');
  if (isSafe(to) && worded) return [{ kind: 'link', to, children, ...place }];
  // A link without words cannot be seen or heard. Where a picture stood in it, that is reported already.
  if (!isSafe(to) || node.children.every(({ type }) => type === 'text'))
    reading.faults.push({ kind: 'link', place, found: to, detail: isSafe(to) ? 'no words' : '' });
  return children;
}
