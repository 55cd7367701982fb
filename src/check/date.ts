import { say } from '../model/say.ts';

const shape = /^(\d{4})-(\d{2})-(\d{2})$/;
const monthNames =
  'January February March April May June July August September October November December'.split(' ');

function daysIn(year: number, month: number): number {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

function exists(year: number, month: number, day: number): boolean {
  return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysIn(year, month);
}

const two = (value: number): string => String(value).padStart(2, '0');
const written = (year: number, month: number, day: number): string =>
  `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`;

/** True for a day that exists, written year-month-day (ISO 8601). A file says the same few days over and over. */
export function isDate(text: string): boolean {
  if (text === lastDate) return true;
  const parts = shape.exec(text);
  const isOne = parts !== null && exists(Number(parts[1]), Number(parts[2]), Number(parts[3]));
  if (isOne) lastDate = text;
  return isOne;
}

let lastDate: string | null = null;

/** What is wrong with a text that should be a date, and what to write; say it after the quoted text. */
export interface DateFault {
  fault: string;
  expected: string;
}

/** Explains a text that is no date; ask only after `isDate` said no. */
export function explainDate(given: string): DateFault {
  const text = given.trim();
  return notExisting(text) ?? yearFirst(text) ?? numbersOnly(text) ?? monthInWords(text) ?? other(text);
}

function notExisting(text: string): DateFault | null {
  const parts = shape.exec(text);
  if (parts === null) return null;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const name = monthNames[month - 1];
  if (name === undefined) {
    const expected = exists(year, day, month) ? written(year, day, month) : say('year-month-day');
    const values = { month: two(month), expected };
    return { fault: say('does not exist: there is no month {month}; write {expected}', values), expected };
  }
  const last = daysIn(year, month);
  const fault = say('does not exist: {month} {year} has {last} days (found day {day})', {
    month: say(name),
    year,
    last,
    day: two(day),
  });
  return { fault, expected: say('a day from 01 to {last}', { last }) };
}

function yearFirst(text: string): DateFault | null {
  const parts = /^(\d{4})[-./ ]?(\d{1,2})[-./ ]?(\d{1,2})([T ].*)?$/.exec(text);
  if (parts === null) return null;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (!exists(year, month, day)) return null;
  const expected = written(year, month, day);
  const fault =
    parts[4] === undefined
      ? say('is not written year-month-day; write {date}', { date: expected })
      : say('holds a time of day; write {date}', { date: expected });
  return { fault, expected };
}

function fullYear(text: string): number {
  return text.length <= 2 ? 2000 + Number(text) : Number(text);
}

function numbersOnly(text: string): DateFault | null {
  const parts = /^(\d{1,2})[-./ ]+(\d{1,2})[-./ ]+(\d{4}|\d{2})$/.exec(text);
  if (parts === null) return null;
  const [first, second, year] = [Number(parts[1]), Number(parts[2]), fullYear(parts[3] ?? '')];
  const dayFirst = exists(year, second, first) ? written(year, second, first) : null;
  const monthFirst = exists(year, first, second) ? written(year, first, second) : null;
  if (dayFirst !== null && monthFirst !== null && dayFirst !== monthFirst) {
    const both = say('{first} or {second}', { first: dayFirst, second: monthFirst });
    return { fault: say('can be read two ways; write year-month-day: {both}', { both }), expected: both };
  }
  const expected = dayFirst ?? monthFirst;
  if (expected === null)
    return { fault: say('is no day of the calendar; write year-month-day'), expected: '2025-10-20' };
  const fault =
    dayFirst === null
      ? say('is written month first; write year-month-day: {date}', { date: expected })
      : say('is written day first; write year-month-day: {date}', { date: expected });
  return { fault, expected };
}

function monthInWords(text: string): DateFault | null {
  const word = /\p{L}{3,}/u.exec(text)?.[0].slice(0, 3).toLowerCase();
  const month = monthNames.findIndex((name) => name.slice(0, 3).toLowerCase() === word) + 1;
  if (month === 0) return null;
  const numbers = [...text.matchAll(/\d+/g)].map(([digits]) => digits);
  const yearText = numbers.find((digits) => digits.length === 4) ?? numbers[1];
  const dayText = numbers.find((digits) => digits !== yearText);
  if (yearText === undefined || dayText === undefined) return null;
  if (!exists(fullYear(yearText), month, Number(dayText))) return null;
  const expected = written(fullYear(yearText), month, Number(dayText));
  return { fault: say('has the month in words; write {date}', { date: expected }), expected };
}

function other(text: string): DateFault {
  const expected = '2025-10-20';
  if (isDayNumber(text)) {
    const fault = say(
      "is a spreadsheet's day number; format the column as year-month-day, such as 2025-10-20",
    );
    return { fault, expected };
  }
  return { fault: say('is not a date; write year-month-day, such as 2025-10-20'), expected };
}

/** True for what a spreadsheet shows of a day of 1982 to 2036 where the cell is not formatted as one. */
export function isDayNumber(text: string): boolean {
  return /^[34]\d{4}(\.\d+)?$/.test(text);
}
