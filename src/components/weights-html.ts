import { say } from '../model/say.ts';
import type { Table } from '../publish/csv.ts';
import { escapeHtml } from './html.ts';

/** The rows of weights.csv, each with the anchor that the workings lead to; its heading is row 1. */
export function weightsHtml({ columns, rows }: Table): string {
  const head = [say('csv row'), ...columns].map((column) => `<th scope="col">${escapeHtml(column)}</th>`);
  const body = rows.map((cells, index) => {
    const row = index + 2;
    const data = cells.map((cell) =>
      typeof cell === 'number' ? `<td class="number">${cell}</td>` : `<td>${escapeHtml(cell ?? '')}</td>`,
    );
    return `<tr id="row-${row}"><th scope="row">${row}</th>${data.join('')}</tr>`;
  });
  return (
    `<div class="scroll" role="group" aria-label="${say('The rows of weights.csv')}" tabindex="0"><table>` +
    `<caption><span>${say('The rows of weights.csv, weights in g')}</span></caption><thead><tr>${head.join('')}</tr></thead>` +
    `<tbody>${body.join('')}</tbody></table></div>`
  );
}
