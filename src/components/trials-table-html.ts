import { say } from '../model/say.ts';
import type { ListedTrial } from '../compute/tables/trials-list.ts';
import { href } from './href.ts';
import { escapeHtml } from './html.ts';

/** The rows of the list of trials; the attributes are what the page's script sorts and filters by. */
export function trialRowsHtml(trials: readonly ListedTrial[]): string {
  return trials.map(rowHtml).join('');
}

function rowHtml(trial: ListedTrial): string {
  const { id, title, crop, season, seasonOrder, setting, design, plants, status, origin } = trial;
  const cell = (key: string, text: string, sort = text) =>
    `<td data-key="${key}" data-sort="${escapeHtml(sort)}">${escapeHtml(text)}</td>`;
  const [address, rel] = origin ? [origin.page, ' rel="external"'] : [href(`trials/${id}/`), ''];
  return (
    `<tr><th scope="row" data-sort="${escapeHtml(title)}"><a href="${escapeHtml(address)}"${rel}>${escapeHtml(title)}</a>` +
    (origin ? ` <span class="note">(${escapeHtml(from(origin))})</span>` : '') +
    `${status === 'finished' ? '' : ` <span class="note">(${escapeHtml(say(status))})</span>`}</th>` +
    cell('crop', crop) +
    cell('season', season, seasonOrder) +
    cell('setting', setting) +
    cell('design', design) +
    `<td class="number" data-sort="${String(plants)}">${String(plants)}</td></tr>`
  );
}

function from({ title, gathered }: NonNullable<ListedTrial['origin']>): string {
  return say('from {site}, gathered {date}', { site: title, date: gathered });
}
