import { say, sayCount } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';

const rule: Rule = {
  rule: 'plant-beyond-set',
  severity: 'error',
  acceptable: false,
  title: 'More plants than were set',
  meaning: 'The plant number is higher than the number of plants set in the pot.',
  example: 'plant is 4, but 3 plants were set at T1 row 2 column 3',
};
export default rule;

export function reportPlantBeyondSet(
  report: Report,
  table: Table,
  row: CsvRow,
  plant: number,
  plants: number,
  where: string,
): void {
  const message = sayCount(
    plants,
    'plant is {plant}, but {count} plant was set at {where}; correct the number, or plants in layout.csv',
    'plant is {plant}, but {count} plants were set at {where}; correct the number, or plants in layout.csv',
    { plant, where },
  );
  report(rule, {
    file: table.file,
    place: table.place(row, 'plant'),
    found: String(plant),
    expected: say('{minimum} to {maximum}', { minimum: 1, maximum: plants }),
    message,
    where,
  });
}
