import { say } from '../../model/say.ts';
import type { CsvRow } from '../../read/csv.ts';
import type { Report, Rule } from '../rule.ts';
import type { Table } from '../table.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';
import { statuses } from '../statuses.ts';

const rule: Rule = {
  rule: 'unknown-status',
  severity: 'error',
  acceptable: false,
  title: 'Unknown status',
  meaning: 'What became of a plant is said in one of six words, so that it is counted rightly.',
  example: '"died" is no status; write one of: weighed, not weighed, dead, no regrowth, culled, not planted',
};
export default rule;

/** What growers write, and the word that it means. */
const meant: Readonly<Record<string, string>> = {
  died: 'dead',
  gone: 'dead',
  death: 'dead',
  missing: 'not weighed',
  lost: 'not weighed',
  'n/a': 'not weighed',
  na: 'not weighed',
  unweighed: 'not weighed',
  removed: 'culled',
  thinned: 'culled',
  discarded: 'culled',
  empty: 'not planted',
  unplanted: 'not planted',
  ok: 'weighed',
  harvested: 'weighed',
  'not regrown': 'no regrowth',
};

export function reportUnknownStatus(
  report: Report,
  table: Table,
  row: CsvRow,
  text: string,
  where: string,
): void {
  const best = meant[text.toLowerCase()] ?? nearest(text, statuses);
  const names = statuses.join(', ');
  const shown = { status: showText(text), names };
  report(rule, {
    file: table.file,
    place: table.place(row, 'status'),
    found: text,
    expected: names,
    message:
      best === null
        ? say('{status} is no status; write one of: {names}', shown)
        : say('{status} is no status; write one of: {names}; did you mean "{name}"?', {
            ...shown,
            name: best,
          }),
    where,
  });
}
