/**
 * A language by its own name, as a reader of it looks for it; the tag where no name is known.
 *
 * @example languageName('es') // "Español"
 */
export function languageName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: 'language', fallback: 'code' }).of(tag) ?? tag;
  return name.charAt(0).toLocaleUpperCase(tag) + name.slice(1);
}
