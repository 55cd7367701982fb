import type { ValueForm } from './value-form.ts';

/** More digits than this no scale of a small trial shows. */
const mostDigits = 7;

/**
 * The text of a value after one more key: a digit, the decimal mark (a point or a comma, whichever is at hand)
 * or `back`, which takes the last sign away. A key that the scale's steps leave no room for changes nothing.
 */
export function typeKey(
  text: string,
  key: string,
  { decimals, mark }: Pick<ValueForm, 'decimals' | 'mark'>,
): string {
  if (key === 'back') return text.slice(0, -1);
  if (key === '.' || key === ',') {
    if (decimals === 0 || text.includes(mark)) return text;
    return `${text === '' ? '0' : text}${mark}`;
  }
  if (!/^\d$/.test(key)) return text;
  const after = text.split(mark)[1];
  if (after !== undefined && after.length >= decimals) return text;
  if (text.replace(mark, '').length >= mostDigits) return text;
  return text === '0' ? key : text + key;
}

/** The value that was meant: without a decimal mark that nothing follows. */
export function typedValue(text: string, { mark }: Pick<ValueForm, 'mark'>): string {
  return text.endsWith(mark) ? text.slice(0, -1) : text;
}
