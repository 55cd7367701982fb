import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { didYouMean, nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'container-treatment',
  severity: 'error',
  acceptable: false,
  title: 'Treatment of a container that is not one',
  meaning: 'The treatment of a container names a factor and one of its levels.',
  example: 'containers[1].treatment: "strenght" is no factor; did you mean "strength"?',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  if (metadata.lost.has('factors')) return;
  const factors = metadata.draft.factors ?? [];
  for (const [index, { treatment, id: container }] of (metadata.draft.containers ?? []).entries()) {
    for (const [id, level] of Object.entries(treatment ?? {})) {
      const factor = factors.find((one) => one.id === id);
      const path = ['containers', index, 'treatment', id];
      const place = `containers[${String(index + 1)}].treatment`;
      if (factor === undefined) {
        const known = factors.map((one) => one.id);
        const fault = say('{place}: {found} is no factor of this trial', { place, found: showText(id) });
        const message = `${fault}${didYouMean(id, known)}`;
        report(rule, {
          file: 'trial.yaml',
          place: metadata.keyPlace(path),
          found: id,
          message,
          where: container,
        });
      } else if (!factor.levels.some((one) => one.id === level)) {
        const known = factor.levels.map((one) => one.id);
        const values = { place, found: showText(level), factor: id };
        const near = nearest(level, known);
        const message =
          near === null
            ? say('{place}: {found} is no level of {factor}; levels: {levels}', {
                ...values,
                levels: known.join(', '),
              })
            : say('{place}: {found} is no level of {factor}; did you mean "{near}"?', { ...values, near });
        report(rule, {
          file: 'trial.yaml',
          place: metadata.place(path),
          found: level,
          message,
          where: container,
        });
      }
    }
  }
}
