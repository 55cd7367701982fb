/** The languages that the program's own words are complete in. */
export const languages = ['en', 'es'] as const;
export type Language = (typeof languages)[number];

/**
 * The language that is being written. Words, numbers and dates are made in every room, so it is kept here
 * rather than handed through every call; under a registered symbol, because the pages run in one process
 * with the commands but with copies of every module.
 */
const key = Symbol.for('tankside:language');
const kept = globalThis as unknown as Record<symbol, Language | undefined>;

/** The language that is being written now: the one set, else that of the page in a browser, else English. */
export function language(): Language {
  return (kept[key] ??= languageOf(globalThis.document?.documentElement.lang));
}

/** Sets the language of the site: once, before anything is written. */
export function writeIn(chosen: Language): void {
  kept[key] = chosen;
}

/**
 * Does a piece of work in another language. The work is done at once, never awaited, so that no other page
 * can be written in between.
 */
export function inLanguage<Result>(chosen: Language, work: () => Result): Result {
  const before = language();
  kept[key] = chosen;
  try {
    return work();
  } finally {
    kept[key] = before;
  }
}

/**
 * The language of ours that a language tag asks for; English where the words of the one asked for are not
 * there.
 *
 * @example languageOf('es-MX') // "es"
 */
export function languageOf(tag: string | undefined): Language {
  const primary = tag?.split('-')[0]?.toLowerCase();
  return languages.find((known) => known === primary) ?? 'en';
}
