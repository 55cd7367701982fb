/** Digits of day, month and year in an order that they do not say themselves. */
const digits = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})$/;
const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[ T]\d{1,2}:\d\d(?::\d\d)?)?$/;

/** Which of day and month stands first in dates of digits; null where none of them tells, or they disagree. */
export function orderOfDates(texts: readonly string[]): 'day first' | 'month first' | null {
  const pairs = texts.flatMap((text) => {
    const found = digits.exec(text.trim());
    return found === null ? [] : [[Number(found[1]), Number(found[2])] as const];
  });
  const isDayFirst = pairs.some(([first]) => first > 12);
  const isMonthFirst = pairs.some(([, second]) => second > 12);
  return isDayFirst === isMonthFirst ? null : isDayFirst ? 'day first' : 'month first';
}

/** A date as year-month-day; `two ways` where day and month could be either, null where it is none. */
export function dateOfWords(text: string, order: 'day first' | 'month first' | null): string | null {
  const plain = iso.exec(text.trim());
  if (plain !== null) return day(plain[1]!, plain[2]!, plain[3]!);
  const found = digits.exec(text.trim());
  if (found === null) return null;
  const [, first = '', second = '', year = ''] = found;
  if (order === null && first !== second) return 'two ways';
  const [month, date] = order === 'month first' ? [first, second] : [second, first];
  return day(year.length === 2 ? `20${year}` : year, month, date);
}

function day(year: string, month: string, date: string): string | null {
  const text = `${year}-${month.padStart(2, '0')}-${date.padStart(2, '0')}`;
  const moment = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(moment.getTime()) || moment.toISOString().slice(0, 10) !== text ? null : text;
}
