import { say } from '../model/say.ts';
import type { ListedTrial } from '../compute/tables/trials-list.ts';
import { href } from './href.ts';
import { escapeHtml } from './html.ts';

/** The rows of the list of trials; the attributes are what the page's script sorts and filters by. */
export function trialRowsHtml(trials: readonly ListedTrial[]): string {
  return trials.map(rowHtml).join('');
}

function rowHtml(trial: ListedTrial): string {
  const { id, title, crop, season, seasonOrder, setting, design, plants, status } = trial;
  const cell = (key: string, text: string, sort = text) =>
    `<td data-key="${key}" data-sort="${escapeHtml(sort)}">${escapeHtml(text)}</td>`;
  return (
    `<tr><th scope="row" data-sort="${escapeHtml(title)}"><a href="${href(`trials/${id}/`)}">${escapeHtml(title)}</a>` +
    `${status === 'finished' ? '' : ` <span class="note">(${escapeHtml(say(status))})</span>`}</th>` +
    cell('crop', crop) +
    cell('season', season, seasonOrder) +
    cell('setting', setting) +
    cell('design', design) +
    `<td class="number" data-sort="${String(plants)}">${String(plants)}</td></tr>`
  );
}
