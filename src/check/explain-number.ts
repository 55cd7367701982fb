import { parseDecimal, type DecimalMark } from './number.ts';

/** What is wrong with a text that should be a number; say it after the quoted text. */
export interface NumberFault {
  fault: string;
  /** What to write, or null where that cannot be told. */
  expected: string | null;
}

const spaces = /[\s\u00a0\u2000-\u200b\u202f\u205f\u2060\u3000\ufeff]/gu;
const hiddenSpaces = /[\u00a0\u2000-\u200a\u202f\u205f\u3000\p{Cf}]/u;
const units =
  /^(mg|g|gr|gm|gms|grs|gram|grams|gramme|grammes|kg|kgs|kilo|kilos|oz|ozs|ounce|ounces|lb|lbs|pound|pounds|ml|cl|dl|l|litres?|liters?|mm|cm|m|in|inch|inches|ft|%|ms\/cm|°?c|°?f|ppm|stk|st|pcs|leaves)\.?$/i;
const missing =
  /^(n\/?a|n\.a\.|nan|null|none|nil|missing|unknown|dead|died|x|xx|tbd|[-–—?.*/]+|#[a-z/0!?]+)$/i;
const lookalikes: Readonly<Record<string, string>> = {
  O: '0',
  o: '0',
  Q: '0',
  D: '0',
  l: '1',
  I: '1',
  i: '1',
  '|': '1',
  S: '5',
  s: '5',
  B: '8',
  Z: '2',
  z: '2',
};

type Explainer = (text: string, mark: DecimalMark) => NumberFault | null;

/** Explains a text that `parseDecimal` refused. */
export function explainNumber(text: string, mark: DecimalMark): NumberFault {
  for (const explain of explainers) {
    const fault = explain(text, mark);
    if (fault !== null) return fault;
  }
  return { fault: 'is not a number; write digits only, such as 120', expected: null };
}

const write = (fault: string, expected: string): NumberFault => ({
  fault: `${fault}; write ${expected}`,
  expected,
});

const isNumber = (text: string, mark: DecimalMark): boolean => parseDecimal(text, mark) !== null;

const unseen: Explainer = (text, mark) => {
  if (!hiddenSpaces.test(text)) return null;
  const bare = text.replaceAll(spaces, '').replaceAll(/\p{Cf}/gu, '');
  if (!isNumber(bare, mark)) return null;
  return write('holds a no-break or zero-width space that does not show', bare);
};

const otherDigits: Explainer = (text, mark) => {
  if (!/[^\P{Nd}0-9]/u.test(text)) return null;
  const plain = text
    .replaceAll(/\p{Nd}/gu, (one) => String(digitOf(one)))
    .replaceAll('٫', mark)
    .normalize('NFKC');
  if (!isNumber(plain, mark))
    return { fault: 'holds digits other than 0 to 9; write the digits 0 to 9', expected: null };
  return write('is written with digits other than 0 to 9', plain);
};

/** Decimal digits stand in Unicode in runs of ten, zero first. */
function digitOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  let zero = code;
  while (zero > code - 9 && /^\p{Nd}$/u.test(String.fromCodePoint(zero - 1))) zero -= 1;
  // Two runs may touch (the mathematical digits): their first run begins at U+1D7CE.
  return code >= 0x1d7ce && code <= 0x1d7ff ? (code - 0x1d7ce) % 10 : code - zero;
}

const formula: Explainer = (text) =>
  text.startsWith('=') ? { fault: 'is a formula; write the number it gives', expected: null } : null;

const absent: Explainer = (text) =>
  missing.test(text)
    ? {
        fault: 'is not a number; leave the cell empty, and write in status what became of the plant',
        expected: 'an empty cell',
      }
    : null;

const wrongMark: Explainer = (text, mark) => {
  if (mark === '.' && /^\d+,\d+$/.test(text)) {
    const point = text.replace(',', '.');
    const declare =
      'or declare harvest: {decimal: ","} in trial.yaml where the whole file has comma decimals';
    if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
      const both = `${text.replace(',', '')} or ${point}`;
      return {
        fault: `has a comma, a thousands separator or a decimal comma; write ${both}, ${declare}`,
        expected: both,
      };
    }
    return { fault: `has a decimal comma; write ${point}, ${declare}`, expected: point };
  }
  if (mark === ',' && /^\d+\.\d+$/.test(text)) {
    const comma = text.replace('.', ',');
    return write('has a decimal point where trial.yaml declares decimal commas', comma);
  }
  return null;
};

const separators: Explainer = (text, mark) => {
  const grouped = /^\d{1,3}([ ,.'’_\u00a0\u2009\u202f])\d{3}(\1\d{3})*([.,]\d+)?$/u.exec(text);
  if (grouped === null) return null;
  const separator = grouped[1] ?? ' ';
  const bare = text.replaceAll(separator, '').replace(/[.,]/, mark);
  return isNumber(bare, mark) ? write('has a thousands separator', bare) : null;
};

const unitTyped: Explainer = (text, mark) => {
  const parts = /^([\d.,]*\d)\s*([\p{L}%°/]+\.?)$/u.exec(text);
  const [, number, unit] = parts ?? [];
  if (number === undefined || unit === undefined || !units.test(unit) || /^[lI]$/.test(unit)) return null;
  const bare = isNumber(number, mark) ? number : number.replace(/[.,]/, mark);
  const fault = `has a unit typed in ("${unit}"); write ${bare} alone: the unit stands in trial.yaml`;
  return { fault, expected: bare };
};

const letters: Explainer = (text, mark) => {
  if (!/\d/.test(text)) return null;
  const digits = text.replaceAll(/[OoQDlIi|SsBZz]/g, (one) => lookalikes[one] ?? one);
  if (digits === text || !isNumber(digits, mark)) return null;
  return { fault: `is not a number; write digits only, such as ${digits}`, expected: digits };
};

const signs: Explainer = (text, mark) => {
  const bare = text.replace(/^[+−–—-]\s*/, '');
  if (bare === text || !isNumber(bare, mark)) return null;
  if (text.startsWith('+')) return write('has a plus sign', bare);
  return { fault: `is negative; write what was read without a sign, such as ${bare}`, expected: bare };
};

const exponent: Explainer = (text) => {
  if (/^[+-]?(inf|infinity|∞)$/i.test(text))
    return { fault: 'is not a number that a scale can show', expected: null };
  if (!/^[+-]?[\d.,]+e[+-]?\d+$/i.test(text)) return null;
  const value = Number(text.replace(',', '.'));
  const whole = Number.isFinite(value) && value < 1e15 ? String(value) : null;
  const plain = whole !== null && /^\d+(\.\d+)?$/.test(whole) ? whole : null;
  const advice = plain === null ? 'write the number out in digits' : `write ${plain}`;
  return { fault: `is written with an exponent; ${advice}`, expected: plain };
};

const barePoint: Explainer = (text, mark) => {
  const full = /^[.,]\d+$/.test(text)
    ? `0${mark}${text.slice(1)}`
    : /^\d+[.,]$/.test(text)
      ? text.slice(0, -1)
      : null;
  return full === null ? null : write('has no digit on one side of its decimal mark', full);
};

const doubtful: Explainer = (text, mark) => {
  const bare = text.replaceAll(/^['~≈<>≤≥±]+\s*|^(ca?\.?|approx\.?|about|circa)\s*|[?*!]+$/gi, '');
  if (bare === text || !isNumber(bare, mark)) return null;
  return { fault: `is not a number alone; write ${bare}, and the doubt in remark`, expected: bare };
};

const likeDate: Explainer = (text) =>
  /^(\d{1,4}[-/]\d{1,2}([-/]\d{1,4})?|\d{1,2}[-. ](jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*\.?)$/iu.test(
    text,
  )
    ? {
        fault: 'looks like a date that a spreadsheet made of a number; write the number again as text',
        expected: null,
      }
    : null;

const tooLong: Explainer = (text) =>
  /^\d+([.,]\d+)?$/.test(text) && text.length > 15
    ? { fault: 'has more digits than a scale shows; write at most 15', expected: null }
    : null;

const explainers: readonly Explainer[] = [
  unseen,
  otherDigits,
  formula,
  absent,
  tooLong,
  wrongMark,
  separators,
  unitTyped,
  letters,
  signs,
  exponent,
  barePoint,
  doubtful,
  likeDate,
];
