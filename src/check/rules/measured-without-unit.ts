import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'measured-without-unit',
  severity: 'warning',
  acceptable: true,
  title: 'Measured without a unit',
  meaning: 'A measured value without its unit can be compared with nothing.',
  example: 'fresh_weight is measured and has no unit; write one, such as unit: g',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  // A unit that was refused is reported as such.
  if (metadata.lost.has('variables.unit')) return;
  for (const [index, { id, kind, unit }] of (metadata.draft.variables ?? []).entries()) {
    if (kind !== 'measured' || unit !== undefined) continue;
    const message = say('{variable} is measured and has no unit; write one, such as unit: g', {
      variable: id,
    });
    const place = metadata.place(['variables', index]);
    report(rule, { file: 'trial.yaml', place, expected: 'unit: g', message });
  }
}
