import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { positionInWords } from '../grid.ts';

const rule: Rule = {
  rule: 'position-left-out',
  severity: 'warning',
  acceptable: true,
  title: 'Position left out of the layout',
  meaning:
    'A few positions of a container have no row in layout.csv while all others have. A hole that was planted would be missed; one that stood empty may be accepted.',
  example: 'T1 row 2 column 3 has no row in layout.csv',
  check,
};
export default rule;

/** Up to this share of a grid a gap looks like a slip, beyond it like a way of planting. */
const fewShare = 0.1;

function check({ layout, metadata }: Facts, report: Report): void {
  if (layout === null || layout.table === null || !layout.complete) return;
  for (const { id, rows, columns } of metadata.draft.containers ?? []) {
    const gaps: { container: string; row: number; column: number }[] = [];
    const most = rows * columns === 0 ? 0 : Math.max(1, Math.floor(rows * columns * fewShare));
    for (let row = 1; row <= rows && gaps.length <= most; row += 1) {
      for (let column = 1; column <= columns && gaps.length <= most; column += 1) {
        if (layout.grid.indexOf(id, row, column) === -1) gaps.push({ container: id, row, column });
      }
    }
    if (gaps.length > most || rows * columns < 4) continue;
    for (const gap of gaps) {
      const message = say(
        '{position} has no row in layout.csv, while the rest of {container} has; was it left empty?',
        { position: positionInWords(gap), container: id },
      );
      report(rule, {
        file: 'layout.csv',
        found: positionInWords(gap),
        message,
        where: `${id} ${String(gap.row)} ${String(gap.column)}`,
      });
    }
  }
}
