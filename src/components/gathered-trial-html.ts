import { formatDate } from '../compute/format/format-date.ts';
import { listed } from '../compute/words/words.ts';
import { say } from '../model/say.ts';
import type { GatheredTrial } from '../publish/gathered-trials.ts';
import { escapeHtml } from './html.ts';

/** Whose a trial of another site is and where it is published, in one line without a space before its commas. */
export function gatheredTrialHtml({
  title,
  version,
  creators,
  season,
  licence,
  origin,
}: GatheredTrial): string {
  const link = (address: string, text: string, rel: string) =>
    `<a href="${escapeHtml(address)}" rel="${rel}">${escapeHtml(text)}</a>`;
  return [
    link(origin.page, title, 'external'),
    escapeHtml(`${say(season.name)} ${String(season.year)}: ${listed(creators)}`),
    escapeHtml(say('version {version}', { version })),
    link(licence.address, licence.id, 'license'),
    link(origin.address, origin.title, 'external'),
    escapeHtml(say('gathered {date}', { date: formatDate(origin.gathered) })),
  ].join(', ');
}
