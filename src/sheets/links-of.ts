import type { SheetBlock, SheetLink } from '../model/fact-sheet.ts';

/** Every link of a sheet, in its order. */
export function linksOf(blocks: readonly SheetBlock[]): SheetLink[] {
  return blocks.flatMap(linksWithin);
}

/** Nodes hold others under several keys (children, items, rows), and nothing else of them is a list of nodes. */
function linksWithin(node: unknown): SheetLink[] {
  if (Array.isArray(node)) return node.flatMap(linksWithin);
  if (typeof node !== 'object' || node === null) return [];
  const inside = Object.values(node).flatMap((value) => (Array.isArray(value) ? linksWithin(value) : []));
  return isLink(node) ? [node, ...inside] : inside;
}

function isLink(node: object): node is SheetLink {
  return 'kind' in node && node.kind === 'link';
}
