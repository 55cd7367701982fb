import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import type { Place } from '../../read/place.ts';
import type { Factor } from '../../model/trial.ts';
import { nearest, otherLetters } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unknown-level',
  severity: 'error',
  acceptable: false,
  title: 'Unknown level',
  meaning: 'The row names a treatment that its factor in trial.yaml does not list.',
  example: '"slate-egrett" is no level of cultivar; did you mean "slate-egret"?',
};
export default rule;

export function reportUnknownLevel(
  report: Report,
  table: Table,
  row: CsvRow,
  factor: Factor,
  text: string,
  where: string,
): void {
  const known = factor.levels.map(({ id }) => id);
  const best = nearest(text, known);
  const shown = { level: showText(text), factor: factor.id };
  report(rule, {
    file: table.file,
    place: table.place(row, factor.id),
    found: text,
    expected: best,
    message:
      best === null
        ? say('{level} is no level of {factor}; levels: {names}', { ...shown, names: known.join(', ') })
        : say('{level} is no level of {factor}; did you mean "{name}"?', { ...shown, name: best }) +
          otherLetters(text, best),
    where,
  });
}

/** Of a level that is misspelt where it is listed, while the rows have it right. */
export function reportMisspeltLevel(
  report: Report,
  place: Place,
  { listed, meant, factor }: { listed: string; meant: string; factor: string },
): void {
  const message = say(
    'the level {level} of {factor} is planted nowhere, while {meant} is, which is no level of it; is it misspelt here?',
    { level: showText(listed), factor, meant: showText(meant) },
  );
  report(rule, { file: 'trial.yaml', place, found: listed, expected: meant, message });
}
