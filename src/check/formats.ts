/** What the generated validators call: the formats of the schemas, and the length of a text. */
import { isDate } from './date.ts';

export { isDate as date };

/** An absolute address without a user's name in it. */
export function uri(text: string): boolean {
  if (/[\s<>"{}|\\^`]/.test(text)) return false;
  if (!URL.canParse(text)) return false;
  const { username, password } = new URL(text);
  return username === '' && password === '';
}

/** The number of characters (code points), as minLength and maxLength count them. */
export function lengthOf(text: string): number {
  return [...text].length;
}
