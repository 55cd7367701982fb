import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'check-not-a-level',
  severity: 'error',
  acceptable: false,
  title: 'Check that is no level',
  meaning: 'The check cultivar, or the control, is one of the levels of its factor.',
  example: 'check is "cobalt-wrenn", which is no level of cultivar; did you mean "cobalt-wren"?',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  if (metadata.lost.has('factors')) return;
  for (const [index, factor] of (metadata.draft.factors ?? []).entries()) {
    const known = factor.levels.map(({ id }) => id);
    if (factor.check === undefined || known.includes(factor.check)) continue;
    const best = nearest(factor.check, known);
    const values = { check: showText(factor.check), factor: factor.id };
    report(rule, {
      file: 'trial.yaml',
      place: metadata.place(['factors', index, 'check']),
      found: factor.check,
      expected: best,
      message:
        best === null
          ? say('check is {check}, which is no level of {factor}; levels: {levels}', {
              ...values,
              levels: known.join(', '),
            })
          : say('check is {check}, which is no level of {factor}; did you mean "{near}"?', {
              ...values,
              near: best,
            }),
    });
  }
}
