import { didYouMean } from '../check/nearest.ts';
import sheetUnknownName from '../check/rules/sheet-unknown-name.ts';
import { showText } from '../check/show-value.ts';
import type { SheetLink } from '../model/fact-sheet.ts';
import { say } from '../model/say.ts';
import { distinct } from '../draw/figure-id.ts';
import { madeOnce } from '../publish/made-once.ts';
import { pagePaths } from '../publish/sitemap.ts';
import { addressRead } from './address-read.ts';
import type { SheetContext } from './component.ts';
import { sheetHeadings } from './sheet-headings.ts';

const pathsOf = madeOnce('page-paths', pagePaths);

/** Reports a link to a page of this site that there is not. Files are looked for apart; a page elsewhere is not. */
export function checkLink({ to, line, column }: SheetLink, context: SheetContext): void {
  const { alone, library, faulty, sheet, report } = context;
  if (!to.startsWith('/') || alone) return;
  const path = to.slice(1).replace(/[?#].*$/, '');
  const isFile = /\.[a-z0-9]+$/i.test(path);
  const trial = /^(?:trials|data)\/([^/]+)\//.exec(path)?.[1];
  if (isFile || (trial !== undefined && faulty.has(trial))) return;
  const known = pathsOf(library);
  const wanted = path === '' || path.endsWith('/') ? path : `${path}/`;
  if (known.includes(wanted)) return;
  const meant = didYouMean(wanted, known).replace('"', '"/');
  const message = say('this site has no page {page}', { page: showText(to) }) + meant;
  report(sheetUnknownName, { file: sheet.file, place: { line, column }, found: to, message });
}

/**
 * Reports links to a place of the sheet's own page that it has not.
 *
 * @param figures the ids of the figures that it shows, in their order
 */
export function checkPlaces(
  links: readonly SheetLink[],
  figures: readonly string[],
  { sheet, report }: SheetContext,
): void {
  const within = links.filter(({ to }) => to.startsWith('#'));
  if (within.length === 0) return;
  const headings = sheetHeadings(sheet.blocks).map(({ id }) => id);
  // "content" is where every page's own text begins, and "#top" the top of any page.
  const places = new Set(['content', 'top', ...distinct([...headings, ...figures])]);
  const known =
    headings.length === 0
      ? say('; it has no headings at all')
      : say('; its headings are {names}', { names: namesOf(headings) });
  const names = [...places];
  for (const { to, line, column } of within) {
    const place = addressRead(to.slice(1));
    if (places.has(place)) continue;
    const meant = didYouMean(place, names).replace('"', '"#');
    const message =
      say('the sheet has no heading {place}', { place: showText(to) }) + (meant === '' ? known : meant);
    report(sheetUnknownName, { file: sheet.file, place: { line, column }, found: to, message });
  }
}

/** As many as a line has room for. */
const mostNamed = 8;

function namesOf(headings: readonly string[]): string {
  const named = headings.slice(0, mostNamed).map((id) => `#${id}`);
  return [...named, ...(headings.length > mostNamed ? ['...'] : [])].join(', ');
}
