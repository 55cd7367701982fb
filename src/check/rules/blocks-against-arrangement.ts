import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import { blocksFault } from '../arrangement-faults.ts';
import type { Report, Rule } from '../rule.ts';
import { unitsOfFactors } from '../strata.ts';

const rule: Rule = {
  rule: 'blocks-against-arrangement',
  severity: 'warning',
  acceptable: true,
  title: 'Blocks in a completely randomised trial',
  meaning:
    'Where blocks are given, treatments are compared within them, which is right where lots were drawn in each block apart. In a completely randomised trial one lot was drawn over all units, and there are no blocks.',
  example:
    'design.arrangement is completely randomised, but there are 4 blocks, and treatments are compared within them; write randomised blocks where lots were drawn in each block, or leave the blocks out',
  check,
};
export default rule;

function check({ metadata, layout }: Facts, report: Report): void {
  const arrangement = metadata.draft.design?.arrangement;
  if (arrangement !== 'completely randomised' || layout === null || !layout.complete) return;
  if (metadata.lost.has('containers.block')) return;
  const blocks = new Set(layout.positions.map(({ block }) => block));
  // Some without a block are reported one by one (plot-missing).
  if (blocks.size < 2 || blocks.has(null)) return;
  const { varied, unit } = unitsOfFactors(layout.positions, metadata.draft.factors ?? []);
  const fault = blocksFault(layout.positions, varied, unit);
  const message =
    fault === null
      ? say(
          'design.arrangement is completely randomised, but there are {count} blocks, and treatments are compared within them; write randomised blocks where lots were drawn in each block, or leave the blocks out',
          { count: blocks.size },
        )
      : say(
          'design.arrangement is completely randomised, but there are {count} blocks, and treatments are compared within them; leave the blocks out, or accept this where lots were drawn in each block: they are no randomised blocks, as {fault}',
          { count: blocks.size, fault },
        );
  const place = metadata.place(['design', 'arrangement']);
  report(rule, { file: 'trial.yaml', place, found: arrangement, message });
}
