import type { Library } from '../model/library.ts';
import { address } from './addresses.ts';
import { cropsOf, cultivarsOf } from './crop-comparisons.ts';
import { dataset, finished } from './dataset.ts';
import { sheetPages } from './sheet-pages.ts';
import { xmlText } from './xml-text.ts';

/** The pages that every site has. A new standing page is added here. */
export const standingPages = [
  '',
  'trials/',
  'cultivars/',
  'compare/',
  'solution/',
  'data/',
  'data/checks/',
  'check/',
  'import/',
  'plan/',
  'weigh/',
  'methods/',
  'methods/components/',
  'search/',
  'help/',
  'licence/',
];

interface Page {
  path: string;
  /** The day of its last change, ISO 8601; null where the content does not say. */
  changed: string | null;
}

function pagesOf(library: Library): Page[] {
  const inOrder = [...library.trials].sort((a, b) => (a.trial.id < b.trial.id ? -1 : 1));
  return [
    ...standingPages.map((path): Page => ({ path, changed: null })),
    ...cropsOf(library).map(({ id }): Page => ({ path: `crops/${id}/`, changed: null })),
    ...cultivarsOf(library).map(({ id }): Page => ({ path: `cultivars/${id}/`, changed: null })),
    ...sheetsOf(library),
    ...inOrder.flatMap((item): Page[] => {
      const { id } = item.trial;
      const published = finished(item) !== null;
      const changed = published ? dataset(item, library).released : null;
      const beside = published ? [`data/${id}/`] : [`trials/${id}/weighing-sheet/`, `trials/${id}/labels/`];
      return [`trials/${id}/`, ...beside].map((path) => ({ path, changed }));
    }),
  ];
}

/** The list of fact sheets, where there are any, and each of them. */
function sheetsOf(library: Library): Page[] {
  const sheets = sheetPages(library)
    .map(({ path, date }): Page => ({ path, changed: date }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  return sheets.length === 0 ? [] : [{ path: 'fact-sheets/', changed: null }, ...sheets];
}

/** The address of every page under the site's own path, `trials/` and so on; that of the home page is empty. */
export function pagePaths(library: Library): string[] {
  return pagesOf(library).map(({ path }) => path);
}

/** sitemap.xml: every page of the site that stands by itself. */
export function sitemap(library: Library): string {
  const entries = pagesOf(library).map(({ path, changed }) => {
    const modified = changed === null ? '' : `<lastmod>${changed}</lastmod>`;
    return `  <url><loc>${xmlText(address(library.site, path))}</loc>${modified}</url>\n`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${entries.join('')}</urlset>
`;
}
