import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import type { Place } from '../../read/place.ts';
import { readingPlace, recordPlace } from '../places.ts';

const rule: Rule = {
  rule: 'date-in-the-future',
  severity: 'error',
  acceptable: false,
  title: 'Date in the future',
  meaning:
    'A finished trial has happened: a day that is still to come is a slip of the pen, mostly of the year.',
  example: 'dates.cuts is 2052-10-20, which is still to come',
  check,
};
export default rule;

function check({ metadata, harvest, readings, today }: Facts, report: Report): void {
  const { draft } = metadata;
  if (draft.status !== 'finished') return;
  const look = (date: string | null | undefined, file: string, name: string, place: () => Place): void => {
    if (date === undefined || date === null || date <= today) return;
    const message = say(
      '{name} is {date}, which is still to come, but the trial is finished; correct the date',
      { name, date },
    );
    const expected = say('{date} or before', { date: today });
    report(rule, { file, place: place(), found: date, expected, message });
  };
  const yaml = (date: string | undefined, name: string, path: (string | number)[]): void => {
    look(date, 'trial.yaml', name, () => metadata.place(path));
  };
  const { sown, germinated, transplanted, cuts = [] } = draft.dates ?? {};
  yaml(sown, 'dates.sown', ['dates', 'sown']);
  yaml(germinated, 'dates.germinated', ['dates', 'germinated']);
  yaml(transplanted, 'dates.transplanted', ['dates', 'transplanted']);
  for (const [index, date] of cuts.entries())
    yaml(date, say('cut {number}', { number: index + 1 }), ['dates', 'cuts', index]);
  for (const key of ['events', 'photos', 'releases'] as const) {
    for (const [index, { date }] of (draft[key] ?? []).entries()) {
      const name = say('the date of {what}', { what: `${key}[${String(index + 1)}]` });
      yaml(date, name, [key, index, 'date']);
    }
  }
  if (harvest?.table.index.has('date')) {
    for (const index of indexesWhere(harvest.records, ({ date, cut }) => date !== cuts[cut - 1])) {
      const { date } = harvest.records[index]!;
      look(date, 'harvest.csv', 'date', () => recordPlace(harvest, index, 'date'));
    }
  }
  for (const [index, { date }] of (readings?.rows ?? []).entries()) {
    look(date, 'readings.csv', 'date', () => readingPlace(readings!, index, 'date'));
  }
}
