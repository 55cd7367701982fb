import type { Place } from '../../read/place.ts';
import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { whereOf } from '../grid.ts';
import { indexesWhere } from '../indexes-where.ts';
import { positionPlace, readingPlace, recordPlace } from '../places.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'spreadsheet-error',
  severity: 'warning',
  acceptable: true,
  title: 'Error of a spreadsheet in place of a text',
  meaning:
    'A formula that failed, or a column too narrow to show its content, was saved in place of what stood there. What it was stands in the spreadsheet or the notebook.',
  example: '"#REF!" is an error of a spreadsheet; write what stood there, or empty the cell',
  check,
};
export default rule;

/** The errors of spreadsheets, which some programs write in their own language, and a column too narrow. */
const errors = /^(#{3,}|#[¡¿]?\p{Lu}[\p{Lu}\d/._ ]*[!?]?)$/u;

function check({ layout, harvest, readings }: Facts, report: Report): void {
  const look = (file: string, text: string | null, place: () => Place | null, where: string): void => {
    if (text === null || !text.startsWith('#') || !errors.test(text)) return;
    const message = say('{found} is an error of a spreadsheet; write what stood there, or empty the cell', {
      found: showText(text),
    });
    report(rule, { file, place: place(), found: text, message, where });
  };
  if (layout?.table) {
    for (const [index, position] of layout.positions.entries()) {
      look('layout.csv', position.plot, () => positionPlace(layout, index, 'plot'), whereOf(position));
      look('layout.csv', position.block, () => positionPlace(layout, index, 'block'), whereOf(position));
    }
  }
  for (const index of indexesWhere(harvest?.records ?? [], (one) => one.remark !== '')) {
    const record = harvest!.records[index]!;
    look('harvest.csv', record.remark, () => recordPlace(harvest!, index, 'remark'), whereOf(record));
  }
  for (const [index, { remark, container }] of (readings?.rows ?? []).entries())
    look('readings.csv', remark, () => readingPlace(readings!, index, 'remark'), container);
}
