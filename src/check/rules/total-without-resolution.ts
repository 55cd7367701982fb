import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'total-without-resolution',
  severity: 'warning',
  acceptable: true,
  title: 'Total without a resolution',
  meaning:
    'How far a total may lie from its parts depends on the steps of the scale. Without them the last digit of the total is taken for its step.',
  example: 'T1 has a weighed_total, but fresh_weight has no resolution; write the step of the scale',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const [primary] = metadata.draft.variables ?? [];
  if (primary === undefined || primary.resolution !== undefined) return;
  // One that was refused is there, and to be mended.
  if (metadata.lost.has('variables.resolution')) return;
  const index = (metadata.draft.containers ?? []).findIndex((one) => one.weighed_total !== undefined);
  const container = metadata.draft.containers?.[index];
  if (container === undefined) return;
  const message = say(
    '{container} has a weighed_total, but {variable} has no resolution; write the step of the scale, such as resolution: 1',
    { container: container.id, variable: primary.id },
  );
  const place = metadata.keyPlace(['containers', index, 'weighed_total']);
  report(rule, { file: 'trial.yaml', place, expected: 'resolution: 1', message });
}
