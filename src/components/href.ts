const base = import.meta.env.BASE_URL.replace(/\/*$/, '/');

/** The address of a page or file of this site, under the path that the site stands on: `href('trials/')`. */
export function href(path = ''): string {
  return base + path.replace(/^\/+/, '');
}
