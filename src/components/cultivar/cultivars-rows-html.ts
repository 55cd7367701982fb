import type { ListedCultivar } from '../../compare/cultivars-list.ts';
import { href } from '../href.ts';
import { escapeHtml } from '../html.ts';

/** The rows of the list of cultivars; the attributes are what the page's script sorts by. */
export function cultivarRowsHtml(cultivars: readonly ListedCultivar[]): string {
  return cultivars
    .map(({ id, name, crop, trials, seasons, seasonOrder, besideCheck, percent }) => {
      const cell = (text: string, sort = text) =>
        `<td data-sort="${escapeHtml(sort)}">${escapeHtml(text)}</td>`;
      return (
        `<tr><th scope="row" data-sort="${escapeHtml(name)}"><a href="${href(`cultivars/${id}/`)}">${escapeHtml(name)}</a></th>` +
        cell(crop) +
        `<td class="number" data-sort="${String(trials)}">${String(trials)}</td>` +
        cell(seasons, seasonOrder) +
        cell(besideCheck, String(percent)) +
        '</tr>'
      );
    })
    .join('');
}

/** The crops, each as a link to the comparison of its cultivars. */
export function cropLinksHtml(crops: readonly { id: string; name: string }[]): string {
  return crops.map(({ id, name }) => `<a href="${href(`crops/${id}/`)}">${escapeHtml(name)}</a>`).join(', ');
}
