import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import { whereOf } from '../grid.ts';
import { positionPlace, readingPlace, recordPlace } from '../places.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'formula-in-text',
  severity: 'error',
  acceptable: false,
  title: 'Text that a spreadsheet would run',
  meaning:
    'A text that begins with =, +, - or @ is a formula to a spreadsheet. Whoever downloads the file could be shown an error, or harmed.',
  example: '"=HYPERLINK(1)" begins like a formula; begin it with a letter',
  check,
};
export default rule;

/** A dash alone, a dash before a word and plain signed numbers are run by no spreadsheet. */
const harmless = /^([-+]+|[-+]\d+([.,]\d+)?)$/;

function isFormula(text: string): boolean {
  const first = text.charCodeAt(0);
  // = + - @, and the tab that some spreadsheets skip before them.
  const isSuspect = first === 61 || first === 43 || first === 45 || first === 64;
  return isSuspect && text.length > 1 && !harmless.test(text);
}

function check({ metadata, layout, harvest, readings }: Facts, report: Report): void {
  const look = (file: string, text: string | null, place: () => Place | null, where: string | null): void => {
    if (text === null || text === '' || !isFormula(text)) return;
    const message = say(
      '{found} begins like a formula, which a spreadsheet would run; begin it with a letter',
      { found: showText(text) },
    );
    report(rule, { file, place: place(), found: text, message, where });
  };
  if (layout?.table) {
    for (const index of indexesWhere(
      layout.positions,
      ({ plot, block }) => plot !== null || block !== null,
    )) {
      const position = layout.positions[index]!;
      look('layout.csv', position.plot, () => positionPlace(layout, index, 'plot'), whereOf(position));
      look('layout.csv', position.block, () => positionPlace(layout, index, 'block'), whereOf(position));
    }
  }
  for (const index of indexesWhere(harvest?.records ?? [], (one) => one.remark !== '')) {
    const record = harvest!.records[index]!;
    look('harvest.csv', record.remark, () => recordPlace(harvest!, index, 'remark'), whereOf(record));
  }
  for (const [index, { remark, container }] of (readings?.rows ?? []).entries()) {
    look('readings.csv', remark, () => readingPlace(readings!, index, 'remark'), container);
  }
  for (const [index, { levels }] of (metadata.draft.factors ?? []).entries()) {
    for (const [number, { id }] of levels.entries()) {
      look('trial.yaml', id, () => metadata.place(['factors', index, 'levels', number, 'id']), null);
    }
  }
}
