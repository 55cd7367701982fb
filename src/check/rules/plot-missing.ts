import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { whereOf } from '../grid.ts';
import { indexesWhere } from '../indexes-where.ts';
import { positionPlace } from '../places.ts';

const rule: Rule = {
  rule: 'plot-missing',
  severity: 'error',
  acceptable: false,
  title: 'Position without its plot',
  meaning: 'Where some positions have a plot or a block, every position has one.',
  example: 'plot is empty, but other positions have one',
  check,
};
export default rule;

function check({ layout, metadata }: Facts, report: Report): void {
  if (layout === null) return;
  for (const name of ['plot', 'block'] as const) {
    // A blank cell of a block column is reported where it is read.
    if (name === 'block' && layout.table?.index.has('block') === true) continue;
    if (name === 'block' && metadata.lost.has('containers.block')) continue;
    const without = indexesWhere(layout.positions, (position) => position[name] === null);
    if (without.length === 0 || without.length === layout.positions.length) continue;
    const said = new Set<string>();
    for (const index of without) {
      const position = layout.positions[index]!;
      if (name === 'block') {
        if (said.has(position.container)) continue;
        said.add(position.container);
        const at = (metadata.draft.containers ?? []).findIndex(({ id }) => id === position.container);
        const message = say(
          '{container} has no block, but other containers have one; write block: under each',
          { container: position.container },
        );
        report(rule, {
          file: 'trial.yaml',
          place: metadata.place(['containers', at]),
          message,
          where: position.container,
        });
        continue;
      }
      const message = say('plot is empty, but other positions have one; write the plot of this position');
      report(rule, {
        file: 'layout.csv',
        place: positionPlace(layout, index, name),
        found: '',
        message,
        where: whereOf(position),
      });
    }
  }
}
