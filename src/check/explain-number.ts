import { say } from '../model/say.ts';
import { parseDecimal, type DecimalMark } from './number.ts';

/** What is wrong with a text that should be a number; say it after the quoted text. */
export interface NumberFault {
  fault: string;
  /** What to write, or null where that cannot be told. */
  expected: string | null;
  /** The unit that was typed behind the number, where that is what is wrong. */
  unit?: string;
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
  return { fault: say('is not a number; write digits only, such as 120'), expected: null };
}

const isNumber = (text: string, mark: DecimalMark): boolean => parseDecimal(text, mark) !== null;

const unseen: Explainer = (text, mark) => {
  if (!hiddenSpaces.test(text)) return null;
  const bare = text.replaceAll(spaces, '').replaceAll(/\p{Cf}/gu, '');
  if (!isNumber(bare, mark)) return null;
  const fault = say('holds a no-break or zero-width space that does not show; write {number}', {
    number: bare,
  });
  return { fault, expected: bare };
};

const otherDigits: Explainer = (text, mark) => {
  if (!/[^\P{Nd}0-9]/u.test(text)) return null;
  const plain = text
    .replaceAll(/\p{Nd}/gu, (one) => String(digitOf(one)))
    .replaceAll('٫', mark)
    .normalize('NFKC');
  if (!isNumber(plain, mark))
    return { fault: say('holds digits other than 0 to 9; write the digits 0 to 9'), expected: null };
  const fault = say('is written with digits other than 0 to 9; write {number}', { number: plain });
  return { fault, expected: plain };
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
  text.startsWith('=') ? { fault: say('is a formula; write the number it gives'), expected: null } : null;

const absent: Explainer = (text) =>
  missing.test(text)
    ? {
        fault: say('is not a number; leave the cell empty, and write in status what became of the plant'),
        expected: say('an empty cell'),
      }
    : null;

const wrongMark: Explainer = (text, mark) => {
  if (mark === '.' && /^\d+,\d+$/.test(text)) {
    const point = text.replace(',', '.');
    if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
      const numbers = { first: text.replace(',', ''), second: point };
      const fault = say(
        'has a comma, a thousands separator or a decimal comma; write {first} or {second}, or declare harvest: {decimal: ","} in trial.yaml where the whole file has comma decimals',
        numbers,
      );
      return { fault, expected: say('{first} or {second}', numbers) };
    }
    const fault = say(
      'has a decimal comma; write {number}, or declare harvest: {decimal: ","} in trial.yaml where the whole file has comma decimals',
      { number: point },
    );
    return { fault, expected: point };
  }
  if (mark === ',' && /^\d+\.\d+$/.test(text)) {
    const comma = text.replace('.', ',');
    const fault = say('has a decimal point where trial.yaml declares decimal commas; write {number}', {
      number: comma,
    });
    return { fault, expected: comma };
  }
  return null;
};

const separators: Explainer = (text, mark) => {
  const grouped = /^\d{1,3}([ ,.'’_\u00a0\u2009\u202f])\d{3}(\1\d{3})*([.,]\d+)?$/u.exec(text);
  if (grouped === null) return null;
  const separator = grouped[1] ?? ' ';
  const bare = text.replaceAll(separator, '').replace(/[.,]/, mark);
  if (!isNumber(bare, mark)) return null;
  return { fault: say('has a thousands separator; write {number}', { number: bare }), expected: bare };
};

const unitTyped: Explainer = (text, mark) => {
  const parts = /^([\d.,]*\d)\s*([\p{L}%°/]+\.?)$/u.exec(text);
  const [, number, unit] = parts ?? [];
  if (number === undefined || unit === undefined || !units.test(unit) || /^[lI]$/.test(unit)) return null;
  const bare = isNumber(number, mark) ? number : number.replace(/[.,]/, mark);
  const fault = say('has a unit typed in ("{unit}"); write {number} alone: the unit stands in trial.yaml', {
    unit,
    number: bare,
  });
  return { fault, expected: bare, unit };
};

const letters: Explainer = (text, mark) => {
  if (!/\d/.test(text)) return null;
  const digits = text.replaceAll(/[OoQDlIi|SsBZz]/g, (one) => lookalikes[one] ?? one);
  if (digits === text || !isNumber(digits, mark)) return null;
  const fault = say('is not a number; write digits only, such as {number}', { number: digits });
  return { fault, expected: digits };
};

const signs: Explainer = (text, mark) => {
  const bare = text.replace(/^[+−–—-]\s*/, '');
  if (bare === text || !isNumber(bare, mark)) return null;
  const fault = text.startsWith('+')
    ? say('has a plus sign; write {number}', { number: bare })
    : say('is negative; write what was read without a sign, such as {number}', { number: bare });
  return { fault, expected: bare };
};

const exponent: Explainer = (text) => {
  if (/^[+-]?(inf|infinity|∞)$/i.test(text))
    return { fault: say('is not a number that a scale can show'), expected: null };
  if (!/^[+-]?[\d.,]+e[+-]?\d+$/i.test(text)) return null;
  const value = Number(text.replace(',', '.'));
  const whole = Number.isFinite(value) && value < 1e15 ? String(value) : null;
  const plain = whole !== null && /^\d+(\.\d+)?$/.test(whole) ? whole : null;
  const fault =
    plain === null
      ? say('is written with an exponent; write the number out in digits')
      : say('is written with an exponent; write {number}', { number: plain });
  return { fault, expected: plain };
};

const barePoint: Explainer = (text, mark) => {
  const full = /^[.,]\d+$/.test(text)
    ? `0${mark}${text.slice(1)}`
    : /^\d+[.,]$/.test(text)
      ? text.slice(0, -1)
      : null;
  if (full === null) return null;
  const fault = say('has no digit on one side of its decimal mark; write {number}', { number: full });
  return { fault, expected: full };
};

const doubtful: Explainer = (text, mark) => {
  const bare = text.replaceAll(/^['~≈<>≤≥±]+\s*|^(ca?\.?|approx\.?|about|circa)\s*|[?*!]+$/gi, '');
  if (bare === text || !isNumber(bare, mark)) return null;
  const fault = say('is not a number alone; write {number}, and the doubt in remark', { number: bare });
  return { fault, expected: bare };
};

const likeDate: Explainer = (text) =>
  /^(\d{1,4}[-/]\d{1,2}([-/]\d{1,4})?|\d{1,2}[-. ](jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*\.?)$/iu.test(
    text,
  )
    ? {
        fault: say('looks like a date that a spreadsheet made of a number; write the number again as text'),
        expected: null,
      }
    : null;

const tooLong: Explainer = (text) =>
  /^\d+([.,]\d+)?$/.test(text) && text.length > 15
    ? { fault: say('has more digits than a scale shows; write at most 15'), expected: null }
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
