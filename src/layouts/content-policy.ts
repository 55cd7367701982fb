import { createHash } from 'node:crypto';

/**
 * Runs before the first paint, so that a reader who chose units does not see the page change under them.
 * It is the one inline script; the policy names it by its hash.
 */
export const unitsScript =
  "(function(d){var u;try{u=localStorage.getItem('tankside-units')}catch(e){}" +
  "d.dataset.units=u==='metric'||u==='us'?u:d.dataset.first})(document.documentElement)";

const hash = (script: string) => `'sha256-${createHash('sha256').update(script).digest('base64')}'`;

/**
 * The Content-Security-Policy of every page: nothing from another host, no inline script but the one above.
 * The development server injects styles and opens a socket to reload the page, so it is given that much more.
 *
 * @param pictures whether the page makes pictures of its figures: a drawing is then read back as a blob of the page's own
 */
export function contentPolicy(development: boolean, pictures = false): string {
  return [
    "default-src 'self'",
    `script-src 'self' ${hash(unitsScript)}`,
    development ? "style-src 'self' 'unsafe-inline'" : "style-src 'self'",
    pictures ? "img-src 'self' blob:" : "img-src 'self'",
    "font-src 'self'",
    development ? "connect-src 'self' ws:" : "connect-src 'self'",
    "object-src 'none'",
    "base-uri 'self'",
    "form-action 'self'",
  ].join('; ');
}
