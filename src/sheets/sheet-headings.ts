import { addressPart } from '../compute/format/address-part.ts';
import { distinct } from '../draw/figure-id.ts';
import type { SheetBlock, SheetHeading, SheetInline } from '../model/fact-sheet.ts';

/** A heading's level on the page, below the page's own, and its id. */
export interface HeadingOnPage {
  heading: SheetHeading;
  level: number;
  id: string;
  text: string;
}

/** The headings of a sheet: the highest that it uses becomes the second level, and none is left out going down. */
export function sheetHeadings(blocks: readonly SheetBlock[]): HeadingOnPage[] {
  const headings = blocks.filter((block) => block.kind === 'heading');
  const highest = Math.min(...headings.map(({ depth }) => depth));
  const ids = distinct(headings.map((heading) => addressPart(textOf(heading.children)) || 'part'));
  let before = 1;
  return headings.map((heading, index) => {
    before = Math.min(heading.depth - highest + 2, before + 1, 6);
    return { heading, level: before, id: ids[index]!, text: textOf(heading.children) };
  });
}

/** The words of running text, without what its components will say. */
export function textOf(nodes: readonly SheetInline[]): string {
  return nodes
    .map((node) => ('text' in node ? node.text : 'children' in node ? textOf(node.children) : ' '))
    .join('')
    .replace(/\s+/g, ' ')
    .trim();
}
