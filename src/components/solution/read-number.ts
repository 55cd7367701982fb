import { say } from '../../model/say.ts';

/** A number that was typed, or what is wrong with it, to be said to who typed it. */
export type Typed = { value: number } | { fault: string };

export interface NumberLimits {
  /** The least that makes sense; 0 where absent. */
  least?: number;
  /** True where the least itself makes no sense. */
  above?: boolean;
  most?: number;
}

/** Beyond this no tank, stock or ratio is meant. */
const mostOfAll = 1e6;

/**
 * Reads a number with a decimal point. A decimal comma, a unit typed behind it, a fraction, a sign or anything else is
 * refused with what to write instead.
 *
 * @example readNumber('1,5') // {fault: '"1,5" has a decimal comma: write 1.5'}
 */
export function readNumber(
  typed: string,
  { least = 0, above = false, most = mostOfAll }: NumberLimits = {},
): Typed {
  const text = typed.trim();
  if (text === '') return { fault: say('Nothing is written here: write a number, such as 1.5') };
  const shown = `"${text.slice(0, 40)}"`;
  if (!/^\d+(\.\d+)?$/.test(text)) return { fault: `${shown} ${explained(text)}` };
  const value = Number(text);
  if (value < least) return { fault: say('{shown} is too little: write {least} or more', { shown, least }) };
  if (above && value === least)
    return { fault: say('{shown} is too little: write more than {least}', { shown, least }) };
  if (value > most) return { fault: say('{shown} is too much: write at most {most}', { shown, most }) };
  return { value };
}

function explained(text: string): string {
  const comma = /^(\d+),(\d+)$/.exec(text);
  if (comma) return withComma(comma[1]!, comma[2]!);
  const point = /^\.(\d+)$/.exec(text);
  if (point) return say('has no digit before its point: write {number}', { number: `0.${point[1]!}` });
  const open = /^(\d+)\.$/.exec(text);
  if (open) return say('has no digit behind its point: write {number}', { number: open[1]! });
  // The number is not repeated: of "645 mg" for grams it would be wrong by a thousand.
  if (/^\d+(?:\.\d+)?\s*[\p{L}%µ°][^\d]*$/u.test(text))
    return say('has a unit typed in: write the number alone, in the unit of the field');
  const fraction = /^(\d+)\s*\/\s*([1-9]\d*)$/.exec(text);
  if (fraction) {
    const value = Number(fraction[1]) / Number(fraction[2]);
    return say('is a fraction: write {number}', { number: Number(value.toPrecision(4)) });
  }
  if (/^[-−–]\s*\d/.test(text)) return say('is below nothing: write it without the sign');
  if (/^\d{1,3}([ ’'\u00a0\u202f])\d{3}(\1\d{3})*$/u.test(text))
    return say('has spaces or marks between its digits: write {number}', {
      number: text.replaceAll(/\D/g, ''),
    });
  return say('is not a number: write digits only, such as 1.5');
}

/** Three digits behind a comma may be thousands. */
function withComma(whole: string, decimals: string): string {
  const asDecimal = `${whole}.${decimals}`;
  if (decimals.length === 3 && whole !== '0')
    return say('has a comma: write {number}, or {thousands} where it parts the thousands', {
      number: asDecimal,
      thousands: whole + decimals,
    });
  return say('has a decimal comma: write {number}', { number: asDecimal });
}
