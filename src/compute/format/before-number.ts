/** A name that a number follows: one that ends with a number itself ("strength 1") is closed with a colon. */
export function beforeNumber(name: string): string {
  return /\p{N}$/u.test(name) ? `${name}:` : name;
}
