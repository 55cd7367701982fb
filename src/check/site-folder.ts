/**
 * The folder under gathered/ in which the trials of another site are kept: its address in lower-case letters,
 * digits and hyphens.
 *
 * @param address an absolute address
 * @example siteFolder('https://example.org/trials/') // "example-org-trials"
 */
export function siteFolder(address: string): string {
  const { host, pathname } = new URL(address);
  return `${host}${pathname}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 100);
}
