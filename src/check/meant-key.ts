import { nearest } from './nearest.ts';

/** The known key that a key is a slip of: misspelt, or run together with its value as in `name:Lettuce`; null for none. */
export function meantKey(key: string, known: readonly string[]): string | null {
  return nearest(key, known) ?? withoutSpace(key, known);
}

/** The known key before a colon that has no space behind it; null where there is none. */
export function withoutSpace(key: string, known: readonly string[]): string | null {
  const name = key.split(':', 1)[0]!;
  return name !== key && known.includes(name) ? name : null;
}
