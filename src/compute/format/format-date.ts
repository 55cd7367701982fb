import { language, type Language } from '../../model/language.ts';

const months: Readonly<Record<Language, readonly string[]>> = {
  en: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  es: [
    'enero',
    'febrero',
    'marzo',
    'abril',
    'mayo',
    'junio',
    'julio',
    'agosto',
    'septiembre',
    'octubre',
    'noviembre',
    'diciembre',
  ],
};

/** Day, month and year in the order and with the small words of the language. */
const dates: Readonly<Record<Language, (day: string, month: string, year: string) => string>> = {
  en: (day, month, year) => `${day}\u00A0${month}\u00A0${year}`,
  es: (day, month, year) => `${day}\u00A0de\u00A0${month} de\u00A0${year}`,
};

function parts(iso: string): { year: string; month: number; day: number } {
  const match = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso);
  const [, year = '', month = '', day = ''] = match ?? [];
  if (match === null || Number(month) < 1 || Number(month) > 12) {
    throw new RangeError(`a date must be written year-month-day, not "${iso}"`);
  }
  return { year, month: Number(month), day: Number(day) };
}

/**
 * A day in words, from its ISO 8601 form. The text is taken apart, never read as a moment, so that no time
 * zone can move it to the day before.
 *
 * @example formatDate('2025-10-20') // "20 October 2025"
 */
export function formatDate(iso: string): string {
  const { year, month, day } = parts(iso);
  return dates[language()](String(day), months[language()][month - 1]!, year);
}

/**
 * A day in short, for figures and tables where the year is said elsewhere.
 *
 * @example formatShortDate('2025-10-20') // "20 Oct"
 */
export function formatShortDate(iso: string): string {
  const { month, day } = parts(iso);
  return `${String(day)}\u00A0${months[language()][month - 1]!.slice(0, 3)}`;
}
