import type { Facts } from '../facts.ts';
import { indexesWhere } from '../indexes-where.ts';
import type { Report, Rule } from '../rule.ts';
import type { Position } from '../../model/trial.ts';
import { whereOf } from '../grid.ts';
import { positionPlace } from '../places.ts';
import { showText } from '../show-value.ts';
import { treatmentInWords } from '../treatment-words.ts';

const rule: Rule = {
  rule: 'plot-not-one',
  severity: 'error',
  acceptable: false,
  title: 'Plot that is not one unit',
  meaning:
    'Positions that share a plot name were one experimental unit: they had one treatment, and stood in one container and block.',
  example: 'plot "T1-a" has cultivar slate-egret here, but cobalt-wren in line 2',
  check,
};
export default rule;

function check({ layout }: Facts, report: Report): void {
  if (layout?.table === null || layout === null) return;
  const first = new Map<string, Position>();
  for (const index of indexesWhere(layout.positions, ({ plot }) => plot !== null)) {
    const position = layout.positions[index]!;
    if (position.plot === null) continue;
    const before = first.get(position.plot);
    if (before === undefined) {
      first.set(position.plot, position);
      continue;
    }
    const difference = differenceOf(before, position);
    if (difference === null) continue;
    const message = `plot ${showText(position.plot)} ${difference}, as line ${String(before.line)} says; a plot has one treatment in one container, and a name of its own`;
    report(rule, {
      file: 'layout.csv',
      place: positionPlace(layout, index, 'plot'),
      found: position.plot,
      message,
      where: whereOf(position),
    });
  }
}

function differenceOf(a: Position, b: Position): string | null {
  if (a.container !== b.container) return `stands in ${b.container} here, but in ${a.container}`;
  if (a.block !== b.block)
    return `is in block ${showText(b.block ?? '')} here, but in ${showText(a.block ?? '')}`;
  const [had, has] = [treatmentInWords(a.treatment), treatmentInWords(b.treatment)];
  return had === has ? null : `has ${has} here, but ${had}`;
}
