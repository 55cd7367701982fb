import { didYouMean } from '../check/nearest.ts';
import sheetUnknownName from '../check/rules/sheet-unknown-name.ts';
import { showText } from '../check/show-value.ts';
import type { SheetLink } from '../model/fact-sheet.ts';
import { say } from '../model/say.ts';
import { madeOnce } from '../publish/made-once.ts';
import { pagePaths } from '../publish/sitemap.ts';
import type { SheetContext } from './component.ts';

const pathsOf = madeOnce('page-paths', pagePaths);

/** Reports a link to a page of this site that there is not. A file of a page, and a page elsewhere, are not looked for. */
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
