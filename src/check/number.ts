/** The decimal mark of a file. */
export type DecimalMark = '.' | ',';

const digit = (code: number): boolean => code >= 48 && code <= 57;

/** Beyond this many digits a number cannot be kept to the last one. */
const mostDigits = 15;

/**
 * A number from decimal digits and at most one decimal mark between digits (`12`, `12.5`, with the declared
 * mark); null for anything else. Signs, exponents, separators and spaces are refused.
 */
export function parseDecimal(text: string, mark: DecimalMark): number | null {
  const markCode = mark.charCodeAt(0);
  let digits = 0;
  let markAt = -1;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (digit(code)) digits += 1;
    else if (code === markCode && markAt === -1 && index > 0 && index < text.length - 1) markAt = index;
    else return null;
  }
  if (digits === 0 || digits > mostDigits) return null;
  return Number(mark === ',' && markAt !== -1 ? text.replace(',', '.') : text);
}

/** The same with a minus sign allowed before the digits, for temperatures and scores. */
export function parseSigned(text: string, mark: DecimalMark): number | null {
  if (!text.startsWith('-')) return parseDecimal(text, mark);
  const value = parseDecimal(text.slice(1), mark);
  return value === null ? null : -value;
}

/** A whole number of at most 9 digits from plain digits; null for anything else. */
export function parseWhole(text: string): number | null {
  if (text.length === 0 || text.length > 9) return null;
  let value = 0;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (!digit(code)) return null;
    value = value * 10 + code - 48;
  }
  return value;
}

/** A cell without the spaces and tabs around it; other unseen characters stay and are reported. */
export function trimmed(text: string): string {
  const last = text.length - 1;
  if (last < 0) return text;
  const first = text.charCodeAt(0);
  const end = text.charCodeAt(last);
  const plain = (code: number): boolean => code !== 32 && code !== 9;
  return plain(first) && plain(end) ? text : text.replaceAll(/^[ \t]+|[ \t]+$/g, '');
}
