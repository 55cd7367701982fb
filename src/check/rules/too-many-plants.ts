import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import { mostPlants } from '../plants-per-pot.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'too-many-plants',
  severity: 'error',
  acceptable: false,
  title: 'More plants than a pot can hold',
  meaning: 'The number of plants set in a pot is beyond a thousand: a slip, or a weight in the wrong column.',
  example: 'plants is 14200, but a pot holds at most 1000',
};
export default rule;

export function reportTooManyPlants(
  report: Report,
  table: Table,
  row: CsvRow,
  plants: number,
  where: string,
): void {
  report(rule, {
    file: table.file,
    place: table.place(row, 'plants'),
    found: String(plants),
    expected: say('{minimum} to {maximum}', { minimum: 1, maximum: mostPlants }),
    message: say('plants is {plants}, but a pot holds at most {most}; correct the number', {
      plants,
      most: mostPlants,
    }),
    where,
  });
}
