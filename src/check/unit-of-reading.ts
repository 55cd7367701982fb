import { say } from '../model/say.ts';
import type { NumberFault } from './explain-number.ts';

/** The unit that each column of readings.csv is in, as schemas/readings.table.json says, and how growers write it. */
const units: Readonly<Record<string, { unit: string; typed: RegExp }>> = {
  level: { unit: 'cm', typed: /^cm$/i },
  added: { unit: 'L', typed: /^(l|lit(?:re|er)s?)$/i },
  ec: { unit: 'mS/cm', typed: /^ms(?:\/cm)?$/i },
  temperature: { unit: '°C', typed: /^°?c$/i },
  rain: { unit: 'L', typed: /^(l|lit(?:re|er)s?)$/i },
  overflow: { unit: 'L', typed: /^(l|lit(?:re|er)s?)$/i },
};

/** What is wrong with a reading that has a unit typed behind it; null where that is not what is wrong with it. */
export function unitOfReading(column: string, { unit: typed, expected }: NumberFault): NumberFault | null {
  if (typed === undefined || expected === null) return null;
  const known = Object.hasOwn(units, column) ? units[column] : undefined;
  if (known === undefined) {
    const fault = say('has a unit typed in ("{unit}"); write {number} alone: {column} has no unit', {
      unit: typed,
      number: expected,
      column,
    });
    return { fault, expected };
  }
  const values = { unit: typed, number: expected, column, own: known.unit };
  return known.typed.test(typed.replace(/\.$/, ''))
    ? {
        fault: say(
          'has a unit typed in ("{unit}"); write {number} alone: {column} is always in {own}',
          values,
        ),
        expected,
      }
    : {
        fault: say(
          'has a unit typed in ("{unit}"), but {column} is always in {own}; convert it, and write the number alone',
          values,
        ),
        expected: null,
      };
}
