/** A name as part of an address: lower-case letters, digits and hyphens; empty where nothing is left. */
export function addressPart(name: string): string {
  return name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
