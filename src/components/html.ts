import { pattern, say } from '../model/say.ts';
import type { PageTable, TableCell, Text } from '../compute/tables/page-table.ts';
import type { Words } from '../compute/words/words.ts';
import type { FigureTable } from '../model/figure.ts';
import type { FirstUnits } from '../model/first-units.ts';

export type { FirstUnits };

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe to stand in HTML, inside and outside of quotes. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character]!);
}

/** Text in one unit, or in both: a script hides the one that the reader does not use. */
export function textHtml(text: Text, first: FirstUnits): string {
  if (typeof text === 'string') return escapeHtml(text);
  if (text.us === null || text.us === text.metric) return escapeHtml(text.metric);
  const metric = `<span class="metric">${escapeHtml(text.metric)}</span>`;
  const us = `<span class="us">${escapeHtml(text.us)}</span>`;
  const [before, behind] = first === 'us' ? [us, metric] : [metric, us];
  return `${before}<span class="either"> (</span>${behind}<span class="either">)</span>`;
}

/** A sentence whose quantities are in both units. */
export function wordsHtml(words: Words, first: FirstUnits): string {
  return words.map((piece) => textHtml(piece, first)).join('');
}

/**
 * A message with links: each `[words](name)` in it leads to the address given under that name. The values are
 * text, and never markup.
 */
export function sayHtml(
  english: string,
  addresses: Readonly<Record<string, string>>,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return escapeHtml(pattern(english))
    .replace(
      /\[([^\]]+)\]\((\w+)\)/g,
      (_, words: string, name: string) => `<a href="${escapeHtml(addresses[name] ?? '')}">${words}</a>`,
    )
    .replace(/\{(\w+)\}/g, (whole, name: string) =>
      Object.hasOwn(values, name) ? escapeHtml(String(values[name])) : whole,
    );
}

/**
 * A table in a region of its own that scrolls sideways where the screen is narrow.
 *
 * @param page the page on which the workings of its cells stand, where that is another one
 */
export function tableHtml(table: PageTable, first: FirstUnits, page = ''): string {
  const head = table.columns.map(
    ({ heading, unit, numeric }) =>
      `<th scope="col"${numeric ? ' class="number"' : ''}>${escapeHtml(heading)}${unitHtml(unit, first)}</th>`,
  );
  const rows = table.rows.map(({ heading, cells }) => {
    const data = cells.map((cell, index) => {
      const numeric = table.columns[index + 1]?.numeric ?? false;
      return `<td${classOf(cell, numeric)}>${cellHtml(cell, first, page)}</td>`;
    });
    return `<tr><th scope="row">${textHtml(heading, first)}</th>${data.join('')}</tr>`;
  });
  const notes = table.notes.map((note) => `<p class="note">${escapeHtml(note)}</p>`).join('');
  return scrolling(table.caption, table.caption, head, rows) + notes;
}

/** The table twin of a figure. */
export function figureTableHtml({ caption, columns, rows }: FigureTable): string {
  const head = columns.map(
    ({ heading, numeric }) =>
      `<th scope="col"${numeric ? ' class="number"' : ''}>${escapeHtml(heading)}</th>`,
  );
  const body = rows.map(([heading = '', ...cells]) => {
    const data = cells.map(
      (cell, index) => `<td${classOf(cell, columns[index + 1]?.numeric ?? false)}>${escapeHtml(cell)}</td>`,
    );
    return `<tr><th scope="row">${escapeHtml(heading)}</th>${data.join('')}</tr>`;
  });
  return scrolling(say('Table: {caption}', { caption }), caption, head, body);
}

/** Text of more characters than this is a sentence, which a narrow screen must not squeeze to a word a line. */
const shortText = 24;

function classOf(cell: Text | TableCell, numeric: boolean): string {
  if (numeric) return ' class="number"';
  const text = typeof cell === 'string' || !('text' in cell) ? cell : cell.text;
  return (typeof text === 'string' ? text : text.metric).length > shortText ? ' class="words"' : '';
}

function unitHtml(unit: Text | undefined, first: FirstUnits): string {
  const nothing = unit === undefined || unit === '' || (typeof unit !== 'string' && unit.metric === '');
  return nothing ? '' : `<span class="unit">, ${textHtml(unit, first)}</span>`;
}

function cellHtml(cell: Text | TableCell, first: FirstUnits, page: string): string {
  if (typeof cell === 'string' || !('text' in cell)) return textHtml(cell, first);
  const text = textHtml(cell.text, first);
  return cell.working === undefined ? text : `<a href="${page}#${cell.working}">${text}</a>`;
}

function scrolling(label: string, caption: string, head: readonly string[], rows: readonly string[]): string {
  return (
    `<div class="scroll" role="group" aria-label="${escapeHtml(label)}" tabindex="0"><table>` +
    `<caption><span>${escapeHtml(caption)}</span></caption><thead><tr>${head.join('')}</tr></thead>` +
    `<tbody>${rows.join('')}</tbody></table></div>`
  );
}
