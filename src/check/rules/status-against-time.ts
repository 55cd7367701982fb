import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { positionInWords, whereOf } from '../grid.ts';
import { recordPlace } from '../places.ts';
import { recordsByPosition } from '../records-by-position.ts';

const rule: Rule = {
  rule: 'status-against-time',
  severity: 'error',
  acceptable: true,
  title: 'Alive again',
  meaning: 'A plant that was dead, culled or never planted at one cut cannot be weighed at a later one.',
  example: 'T1 row 2 column 3 is weighed at cut 2, but was dead at cut 1 (line 9)',
  check,
};
export default rule;

const over = new Set<string>(['dead', 'culled', 'not planted']);

function check({ harvest }: Facts, report: Report): void {
  if (harvest === null) return;
  for (const indexes of recordsByPosition(harvest).several.values()) {
    if (!indexes.some((index) => over.has(harvest.records[index]!.status))) continue;
    const ended = new Map<number | null, { cut: number; status: string; line: number }>();
    const inOrder = [...indexes].sort((a, b) => harvest.records[a]!.cut - harvest.records[b]!.cut);
    for (const index of inOrder) {
      const record = harvest.records[index]!;
      const { plant, cut, status, line } = record;
      const before = ended.get(plant);
      if (before !== undefined && before.cut < cut && !over.has(status) && status !== 'no regrowth') {
        report(rule, {
          file: 'harvest.csv',
          place: recordPlace(harvest, index, harvest.table.index.has('status') ? 'status' : 'container'),
          found: status,
          message: say(
            '{position} is {status} at cut {cut}, but was {before} at cut {earlier} (line {line}); one of the two is wrong',
            {
              position: positionInWords(record),
              status,
              cut,
              before: before.status,
              earlier: before.cut,
              line: before.line,
            },
          ),
          where: whereOf(record),
        });
      }
      if (over.has(status) && before === undefined) ended.set(plant, { cut, status, line });
    }
  }
}
