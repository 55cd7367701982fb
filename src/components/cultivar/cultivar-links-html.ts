import { href } from '../href.ts';
import { escapeHtml } from '../html.ts';

/** Names of cultivars, each a link to its page, with commas between them. */
export function cultivarLinksHtml(cultivars: readonly { id: string; name: string }[]): string {
  return cultivars
    .map(({ id, name }) => `<a href="${href(`cultivars/${id}/`)}">${escapeHtml(name)}</a>`)
    .join(', ');
}
