/** A number as it may be read, and the size of its last digit: 1 for 152, 0.1 for 5.4, a quarter for a half. */
export interface NumberRead {
  value: number;
  step: number;
}

/** To what part a fraction is told: a half is told to the quarter. */
const toldTo: Readonly<Record<string, number>> = { '½': 4, '¼': 4, '¾': 4, '⅓': 3, '⅔': 3, '⅛': 8 };
const parts: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
};

/** How a number is typed: digits with marks between, a fraction, or both. */
export const numberSource =
  '(?:\\d{1,3}(?:[,.\\u0020\\u00a0\\u202f]\\d{3})+(?!\\d)(?:[.,]\\d+)?|\\d+(?:[.,]\\d+)?)(?:[\\s-]?[½¼¾⅓⅔⅛]|\\s\\d\\/\\d{1,2})?|[½¼¾⅓⅔⅛]|\\d\\/\\d{1,2}';

/**
 * Every way to read a typed number. `1.820` is read both with thousands and with decimals, since growers of
 * different countries mean different things by it.
 *
 * @example numbersRead('1,820') // [{ value: 1820, step: 1 }, { value: 1.82, step: 0.001 }]
 */
export function numbersRead(text: string): NumberRead[] {
  const sign = /[½¼¾⅓⅔⅛]$/.exec(text)?.[0];
  if (sign !== undefined) {
    const whole = Number(text.slice(0, -1).trim().replace('-', '') || 0);
    return [{ value: whole + parts[sign]!, step: 1 / toldTo[sign]! }];
  }
  const fraction = /^(?:(\d+)\s)?(\d)\/(\d{1,2})$/.exec(text);
  if (fraction) {
    const [, whole = '0', above, below] = fraction;
    return [
      {
        value: Number(whole) + Number(above) / Number(below),
        step: 1 / Math.max(Number(below), below === '2' ? 4 : 0),
      },
    ];
  }
  // "1 820" may be one number, or the end of one thing and the start of another.
  const apart = / /.test(text) ? numbersRead(text.split(' ').at(-1)!) : [];
  if (apart.length > 0) return [...numbersRead(text.replaceAll(' ', '')), ...apart];
  const spaced = text.replaceAll(/[\u00a0\u202f]/g, '');
  if (/^\d+$/.test(spaced)) return [{ value: Number(spaced), step: 1 }];
  const marks = [...spaced.matchAll(/[.,]/g)];
  const last = marks.at(-1)!.index;
  const decimals = spaced.length - last - 1;
  const asDecimals = {
    value: Number(`${spaced.slice(0, last).replaceAll(/[.,]/g, '')}.${spaced.slice(last + 1)}`),
    step: 10 ** -decimals,
  };
  const alike = new Set(marks.map(([mark]) => mark)).size === 1;
  const grouped = /^\d{1,3}(?:[.,]\d{3})+$/.test(spaced) && alike;
  const asThousands = { value: Number(spaced.replaceAll(/[.,]/g, '')), step: 1 };
  if (grouped && marks.length > 1) return [asThousands];
  return grouped && !spaced.startsWith('0') ? [asThousands, asDecimals] : [asDecimals];
}
