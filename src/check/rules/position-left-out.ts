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

/** A grid so many times larger than what is planted has a digit too many. */
const timesLarger = 5;

function check({ layout, metadata }: Facts, report: Report): void {
  if (layout === null || layout.table === null || !layout.complete) return;
  const planted = new Map<string, { rows: number; columns: number }>();
  for (const { container, row, column } of layout.positions) {
    const before = planted.get(container) ?? { rows: 0, columns: 0 };
    planted.set(container, { rows: Math.max(before.rows, row), columns: Math.max(before.columns, column) });
  }
  for (const [index, { id, rows, columns }] of (metadata.draft.containers ?? []).entries()) {
    for (const name of ['rows', 'columns'] as const) {
      const highest = planted.get(id)?.[name] ?? 0;
      const size = name === 'rows' ? rows : columns;
      if (highest === 0 || size < highest * timesLarger) continue;
      const message = say(
        '{name} of {container} is {size}, but layout.csv goes to {highest}; is it {highest}?',
        {
          name,
          container: id,
          size,
          highest,
        },
      );
      const place = metadata.place(['containers', index, name]);
      report(rule, {
        file: 'trial.yaml',
        place,
        found: String(size),
        expected: String(highest),
        message,
        where: id,
      });
    }
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
