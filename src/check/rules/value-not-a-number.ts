import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { explainNumber } from '../explain-number.ts';
import { unitOfReading } from '../unit-of-reading.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'value-not-a-number',
  severity: 'error',
  acceptable: false,
  title: 'Value that is not a number',
  meaning:
    'Readings, counts and scores are written in digits, with the decimal mark that trial.yaml declares, and nothing else.',
  example: 'ec: "1,7" has a decimal comma; write 1.7',
};
export default rule;

export function reportValueNotANumber(
  report: Report,
  table: Table,
  row: CsvRow,
  name: string,
  text: string,
  where: string | null,
): void {
  const explained = explainNumber(text, table.decimal);
  const { fault, expected } =
    (table.file === 'readings.csv' ? unitOfReading(name, explained) : null) ?? explained;
  // What is said of a missing weight does not fit other values.
  const ofPlants = say('is not a number; leave the cell empty, and write in status what became of the plant');
  const said =
    fault === ofPlants ? say('is not a number; leave the cell empty where nothing was read') : fault;
  report(rule, {
    file: table.file,
    place: table.place(row, name),
    found: text,
    expected,
    message: `${table.heading(name)}: ${showText(text)} ${said}`,
    where,
  });
}
