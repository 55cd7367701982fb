import { say } from '../../model/say.ts';
import type { Position } from '../../model/trial.ts';
import type { Facts, Layout } from '../facts.ts';
import { whereOf } from '../grid.ts';
import { positionPlace } from '../places.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'plot-in-two',
  severity: 'warning',
  acceptable: true,
  title: 'Plot under two names',
  meaning:
    'All plots but two have the same number of positions, and these two, of one treatment side by side, have that number together: probably the name of one position is misspelt, and the trial would be taken to have one unit more than it had.',
  example:
    'plot "T1-A" has 1 position and "T1-a" has 2 of the same treatment, while all others have 3; is it one plot?',
  check,
};
export default rule;

/** So many plots of one size make another size a surprise. */
const fewest = 3;

function check({ layout }: Facts, report: Report): void {
  if (layout === null || layout.table === null || !layout.treated) return;
  const plots = Map.groupBy(
    [...layout.positions.keys()].filter((index) => layout.positions[index]!.plot !== null),
    (index) => layout.positions[index]!.plot!,
  );
  const sizes = Map.groupBy(plots.values(), (indexes) => indexes.length);
  const [most] = [...sizes].sort(([, a], [, b]) => b.length - a.length);
  if (most === undefined || most[1].length < fewest) return;
  const odd = [...plots.values()].filter(({ length }) => length !== most[0]);
  const [one, other] = odd.sort((a, b) => a.length - b.length || b[0]! - a[0]!);
  if (odd.length !== 2 || one === undefined || other === undefined) return;
  if (one.length + other.length === most[0] && areOneUnit(layout, [...one, ...other]))
    reportInTwo(layout, { one, other, usual: most[0] }, report);
}

/** True where positions stand in one container and block and have one treatment. */
function areOneUnit({ positions }: Layout, indexes: readonly number[]): boolean {
  const unitOf = ({ container, block, treatment }: Position): string =>
    JSON.stringify([container, block, Object.entries(treatment).sort()]);
  return new Set(indexes.map((index) => unitOf(positions[index]!))).size === 1;
}

function reportInTwo(
  layout: Layout,
  { one, other, usual }: { one: readonly number[]; other: readonly number[]; usual: number },
  report: Report,
): void {
  const [index = 0] = one;
  const position = layout.positions[index]!;
  const meant = layout.positions[other[0]!]!.plot!;
  const message = say(
    'positions of plot {plot}: {count}, and of {meant}, of the same treatment beside it: {rest}; all other plots have {usual}. Is it one plot, written {meant} throughout?',
    { plot: showText(position.plot!), count: one.length, meant: showText(meant), rest: other.length, usual },
  );
  report(rule, {
    file: 'layout.csv',
    place: positionPlace(layout, index, 'plot'),
    found: position.plot,
    expected: meant,
    message,
    where: whereOf(position),
  });
}
