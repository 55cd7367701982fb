import type { SiteSettings } from '../model/library.ts';

/** The site's own address with a slash at its end, so that paths may be put behind it. */
export function siteAddress(site: SiteSettings): string {
  return site.url.endsWith('/') ? site.url : `${site.url}/`;
}

/** The whole address of a path of the site. Path parts are percent-encoded, slashes kept. */
export function address(site: SiteSettings, path: string): string {
  return siteAddress(site) + path.split('/').map(encodeURIComponent).join('/');
}

/** The page of a trial. */
export const trialPage = (site: SiteSettings, id: string): string => address(site, `trials/${id}/`);

/** The data page of a trial, which is where its files lie. */
export const dataPage = (site: SiteSettings, id: string): string => address(site, `data/${id}/`);

/** A file of a trial's dataset. */
export const dataFile = (site: SiteSettings, id: string, name: string): string =>
  address(site, `data/${id}/${name}`);
