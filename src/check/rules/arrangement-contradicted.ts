import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { unitsOfFactors } from '../strata.ts';
import { blocksFault, latinSquareFault, splitPlotFault, unreplicatedFault } from '../arrangement-faults.ts';

const rule: Rule = {
  rule: 'arrangement-contradicted',
  severity: 'error',
  acceptable: false,
  title: 'Arrangement contradicted by the layout',
  meaning:
    'In randomised blocks every block holds every treatment, or blocks too small for that are of one size and the treatments not in all of them have equally many units; in a Latin square every row and column holds each once; in a split plot two factors have units of different size.',
  example: 'design.arrangement is randomised blocks, but block "2" lacks cultivar slate-egret',
  check,
};
export default rule;

function check({ metadata, layout }: Facts, report: Report): void {
  const { design, factors = [] } = metadata.draft;
  if (design === undefined || layout === null || !layout.treated || layout.positions.length === 0) return;
  if (metadata.lost.has('containers.block')) return;
  const { positions } = layout;
  const { varied, units, unit } = unitsOfFactors(positions, factors);
  if (varied.length === 0) return;
  const fault =
    design.arrangement === 'randomised blocks'
      ? blocksFault(positions, varied, unit)
      : design.arrangement === 'latin square'
        ? latinSquareFault(positions, unit)
        : design.arrangement === 'split plot'
          ? splitPlotFault(varied, units, positions)
          : design.arrangement === 'unreplicated'
            ? unreplicatedFault(positions, unit)
            : null;
  if (fault === null) return;
  const { arrangement } = design;
  const place = metadata.place(['design', 'arrangement']);
  report(rule, {
    file: 'trial.yaml',
    place,
    found: arrangement,
    message: say('design.arrangement is {arrangement}, but {fault}', { arrangement, fault }),
  });
}
