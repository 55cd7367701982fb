/**
 * Words that somebody wrote elsewhere, as text of a fact sheet: nothing in them is taken for a mark or a tag.
 *
 * @example escapeText('a {b}') // "a \\{b\\}"
 */
export function escapeText(text: string): string {
  return text
    .replaceAll(/\s+/g, ' ')
    .trim()
    .replaceAll(/[\\`*_{}[\]<>#&~|]/g, '\\$&')
    .replace(/^(?:[-+]|\d+(?=[.)]))/, '\\$&')
    .replace(/^\\(\d+)/, '$1\\');
}
