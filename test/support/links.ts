/** Finds links of a surveyed site that lead nowhere. */
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Link, Survey, SurveyedPage } from './survey.ts';

/** One line for each internal link, asset or fragment that does not resolve under the site's base path. */
export function brokenLinks({ base, pages }: Survey, dist: string): string[] {
  const byUrl = new Map(pages.map((page) => [page.url.replace(/#.*/, ''), page]));
  return pages.flatMap((page) => {
    const faults = page.links.flatMap((link) => faultOf(link, page, base, dist, byUrl) ?? []);
    const twice = page.ids.filter((id, at) => page.ids.indexOf(id) !== at);
    return [...new Set([...faults, ...twice.map((id) => `the id "${id}" stands twice`)])].map(
      (fault) => `/${page.path}: ${fault}`,
    );
  });
}

function faultOf(
  { url, written }: Link,
  page: SurveyedPage,
  base: string,
  dist: string,
  byUrl: Map<string, SurveyedPage>,
): string | undefined {
  const target = new URL(url);
  if (target.protocol === 'javascript:') return `${written} runs script`;
  if (target.host !== new URL(base).host) return undefined;
  const bare = `${target.origin}${target.pathname}`;
  if (!bare.startsWith(base)) return `${written} leaves the base path`;
  const path = decodeURIComponent(bare.slice(base.length));
  if (!resolves(join(dist, path), path)) return `${written} leads nowhere`;
  const fragment = decodeURIComponent(target.hash.slice(1));
  if (fragment === '' || fragment === 'top') return undefined;
  const ids = (byUrl.get(bare) ?? (bare === page.url ? page : undefined))?.ids;
  if (ids === undefined || ids.includes(fragment)) return undefined;
  return `${written} names an id that is not there`;
}

function resolves(file: string, path: string): boolean {
  if (path === '' || path.endsWith('/')) return existsSync(join(file, 'index.html'));
  return existsSync(file) && statSync(file).isFile();
}
