import { parseDecimal, parseSigned, type DecimalMark } from '../check/number.ts';
import type { WorkbookCell } from '../model/workbook.ts';
import { plainWords } from './plain-words.ts';
import { endingUnit } from './unit-words.ts';
import words from './value-words.json' with { type: 'json' };

/** What a cell in a column of values says; or why it says nothing that can be used. */
export type CellValue =
  | { digits: string; /** Null where the cell names none of its own. */ unit: string | null }
  | { status: string }
  | 'blank'
  | 'not a number'
  | 'a date'
  | 'a fault'
  | 'below zero'
  | 'a share'
  | 'two ways';

export interface ValueReading {
  /** Null where commas or points could part thousands as well. */
  decimal: DecimalMark | null;
  /** The grower's own words to a status, a number or `blank`. */
  words: Readonly<Record<string, string>>;
  isWeight: boolean;
}

/** Reads a cell of a column of values. */
export function cellValue(cell: WorkbookCell, { decimal, words: own, isWeight }: ValueReading): CellValue {
  if (cell.text === '') return 'blank';
  const meant = ownWord(cell.text, own);
  if (meant !== undefined) return saidByWord(meant);
  if (cell.kind === 'date') return 'a date';
  if (cell.kind === 'fault') return 'a fault';
  if (cell.kind === 'truth')
    return isWeight ? 'not a number' : { digits: cell.text === 'TRUE' ? '1' : '0', unit: null };
  if (cell.kind === 'number') {
    if (isWeight && cell.text.startsWith('-')) return 'below zero';
    if (isWeight && cell.shown?.endsWith('%') === true) return 'a share';
    return { digits: cell.text, unit: endingUnit(cell.shown ?? '').unit };
  }
  return ofText(cell.text, decimal, isWeight);
}

function saidByWord(meant: string): CellValue {
  if (meant === 'blank') return 'blank';
  return /^-?\d+(?:\.\d+)?$/.test(meant) ? { digits: meant, unit: null } : { status: meant };
}

/** Pounds and ounces, as scales show them: `1 lb 3.5 oz`. */
const poundsAndOunces = /^(\d{1,3})\s*(?:lbs?|#)\.?,?\s*(\d{1,2}(?:[.,]\d{1,3})?)\s*oz\.?$/i;

function ofText(given: string, decimal: DecimalMark | null, isWeight: boolean): CellValue {
  const text = given
    .replaceAll(/[\u00a0\u2007\u202f]/g, ' ')
    .replace(/^\u2212/, '-')
    .trim();
  const { rest, unit } = isWeight ? endingUnit(text) : { rest: text, unit: null };
  const both = isWeight ? poundsAndOunces.exec(text) : null;
  if (both !== null && decimal !== null) {
    const ounces = parseSigned(both[2]!, decimal);
    if (ounces !== null && ounces < 16)
      return { digits: String(toFifteen(Number(both[1]) * 16 + ounces)), unit: 'oz' };
  }
  if (decimal === null && /^-?\d+[.,]\d+$/.test(rest)) return 'two ways';
  const value = parseSigned(rest, decimal ?? '.');
  if (value !== null) {
    if (isWeight && value < 0) return 'below zero';
    return { digits: rest.replace(',', '.'), unit };
  }
  const status = statusInWords(text);
  return status === null ? 'not a number' : { status };
}

const toFifteen = (value: number): number => Number(value.toPrecision(15));

/** A whole number in a cell; null for what is none. */
export function wholeOf(text: string): string | null {
  const value = parseDecimal(text.trim().replace(/\.0+$/, ''), '.');
  return value === null || !Number.isInteger(value) ? null : String(value);
}

/** The status that a cell of a status column says; the cell's own word where it says none that is known. */
export const statusOfCell = (text: string, own: Readonly<Record<string, string>>): string =>
  ownWord(text, own) ?? statusInWords(text) ?? text;

/** The status that a word or two mean; null for what means none. */
export function statusInWords(text: string): string | null {
  const plain = plainWords(text);
  return Object.entries(words).find(([, list]) => list.includes(plain))?.[0] ?? null;
}

/** What the grower has said that a text means; any text may come, and so the name of what every object has. */
const ownWord = (text: string, own: Readonly<Record<string, string>>): string | undefined =>
  Object.hasOwn(own, text) ? own[text] : undefined;
