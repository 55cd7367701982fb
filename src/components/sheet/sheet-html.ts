import type {
  BlockComponent,
  InlineComponent,
  SheetBlock,
  SheetCell,
  SheetInline,
  SheetTable,
} from '../../model/fact-sheet.ts';
import { say } from '../../model/say.ts';
import type { Piece } from '../../sheets/piece.ts';
import { href } from '../href.ts';
import { escapeHtml, type FirstUnits, wordsHtml } from '../html.ts';
import type { HeadingOnPage } from '../../sheets/sheet-headings.ts';

/** What a sheet's text is written with. */
export interface SheetWriting {
  pieces: ReadonlyMap<InlineComponent | BlockComponent, readonly Piece[]>;
  headings: readonly HeadingOnPage[];
  /** The units that the site shows first. */
  first: FirstUnits;
  /** The whole address of a page of this site, for paper, on which nothing can be followed. */
  whole?: (path: string) => string;
}

/** Running text as HTML; whatever its author wrote is text and never markup. */
export function inlinesHtml(nodes: readonly SheetInline[], writing: SheetWriting): string {
  return nodes.map((node) => inlineHtml(node, writing)).join('');
}

function inlineHtml(node: SheetInline, writing: SheetWriting): string {
  switch (node.kind) {
    case 'text':
      return escapeHtml(node.text);
    case 'emphasis':
      return `<em>${inlinesHtml(node.children, writing)}</em>`;
    case 'strong':
      return `<strong>${inlinesHtml(node.children, writing)}</strong>`;
    case 'code':
      return `<code>${escapeHtml(node.text)}</code>`;
    case 'break':
      return '<br>';
    case 'link':
      return `<a href="${escapeHtml(addressOf(node.to))}">${inlinesHtml(node.children, writing)}</a>${onPaper(node.to, writing)}`;
    case 'component':
      return componentHtml(node, writing, inlinesHtml(node.children, writing));
  }
}

/** Where a link within this site leads, printed behind it; the print style does so for others. */
function onPaper(to: string, { whole }: SheetWriting): string {
  if (whole === undefined || !to.startsWith('/')) return '';
  return `<span class="printed"> (${escapeHtml(whole(to.slice(1)))})</span>`;
}

/** An address that begins with a slash is one of this site, wherever the site stands. */
function addressOf(to: string): string {
  return to.startsWith('/') ? href(to) : to;
}

/** A component within text. One that could not be filled in (the development server shows it) leaves its name. */
function componentHtml(component: InlineComponent, { pieces, first }: SheetWriting, inner: string): string {
  const made = pieces.get(component);
  if (made === undefined) return `<mark>${escapeHtml(component.name)}</mark>`;
  return made.map((piece) => pieceHtml(piece, first, inner)).join('');
}

function pieceHtml(piece: Piece, first: FirstUnits, inner: string): string {
  if (piece.kind === 'quoted') return `<q>${inner}</q>`;
  if (piece.kind !== 'words') return '';
  const words = wordsHtml(piece.words, first);
  const linked = piece.path === null ? words : `<a href="${escapeHtml(href(piece.path))}">${words}</a>`;
  return linked + wordsHtml(piece.behind, first);
}

/** Blocks of text as HTML. Figures, tables of the findings and photographs are not among them. */
export function blocksHtml(nodes: readonly SheetBlock[], writing: SheetWriting): string {
  return nodes.map((node) => blockHtml(node, writing)).join('');
}

/** One block of text as HTML. */
export function blockHtml(node: SheetBlock, writing: SheetWriting): string {
  switch (node.kind) {
    case 'paragraph':
      return node.children.length === 0 ? '' : `<p>${inlinesHtml(node.children, writing)}</p>`;
    case 'heading': {
      const on = writing.headings.find(({ heading }) => heading === node);
      const inner = inlinesHtml(node.children, writing);
      // A heading within a list or a quotation heads no part of the page.
      if (on === undefined) return `<p><strong>${inner}</strong></p>`;
      const tag = `h${String(on.level)}`;
      return `<${tag} id="${on.id}">${inner}</${tag}>`;
    }
    case 'list': {
      const items = node.items.map(({ children }) => `<li>${itemHtml(children, writing)}</li>`).join('');
      if (node.start === null) return `<ul>${items}</ul>`;
      return `<ol${node.start === 1 ? '' : ` start="${String(node.start)}"`}>${items}</ol>`;
    }
    case 'quote':
      return `<blockquote>${blocksHtml(node.children, writing)}</blockquote>`;
    case 'table':
      return tableHtml(node, writing);
    case 'preformatted':
      return scrolling(`<pre>${escapeHtml(node.text)}</pre>`);
    case 'rule':
      return '<hr>';
    case 'component':
      return blockComponentHtml(node, writing);
  }
}

/** An item that is one paragraph is set without a paragraph's distance. */
function itemHtml(children: readonly SheetBlock[], writing: SheetWriting): string {
  const [only, more] = children;
  if (only?.kind === 'paragraph' && more === undefined) return inlinesHtml(only.children, writing);
  return blocksHtml(children, writing);
}

function blockComponentHtml(component: BlockComponent, writing: SheetWriting): string {
  const made = writing.pieces.get(component);
  if (made === undefined) return `<p><mark>${escapeHtml(component.name)}</mark></p>`;
  const [piece] = made;
  if (piece?.kind === 'quoted') return `<blockquote>${blocksHtml(component.children, writing)}</blockquote>`;
  if (piece?.kind === 'caution') {
    const inner = blocksHtml(component.children, writing);
    return `<div class="cautions" role="note" aria-label="${escapeHtml(say('Caution'))}">${inner}</div>`;
  }
  return `<p>${made.map((each) => pieceHtml(each, writing.first, '')).join('')}</p>`;
}

function tableHtml({ head, rows, align }: SheetTable, writing: SheetWriting): string {
  const cell = (tag: string, { children }: SheetCell, column: number, more = ''): string => {
    const number = align[column] === 'right' ? ' class="number"' : '';
    return `<${tag}${more}${number}>${inlinesHtml(children, writing)}</${tag}>`;
  };
  const headings = head.map((each, column) =>
    each.children.length === 0 ? cell('td', each, column) : cell('th', each, column, ' scope="col"'),
  );
  const body = rows.map((row) => {
    const cells = row.map((each, column) =>
      column === 0 && each.children.length > 0
        ? cell('th', each, column, ' scope="row"')
        : cell('td', each, column),
    );
    return `<tr>${cells.join('')}</tr>`;
  });
  return scrolling(
    `<table><thead><tr>${headings.join('')}</tr></thead><tbody>${body.join('')}</tbody></table>`,
  );
}

/** A region of its own that is moved sideways where the screen is narrow. */
function scrolling(inner: string): string {
  return `<div class="scroll" role="group" aria-label="${escapeHtml(say('Table'))}" tabindex="0">${inner}</div>`;
}
