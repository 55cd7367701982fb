import type { Problem } from '../../model/problem.ts';
import { say } from '../../model/say.ts';
import { collector } from '../collect.ts';
import type { Facts } from '../facts.ts';
import { nearest } from '../nearest.ts';
import type { Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'accepted-in-vain',
  severity: 'warning',
  acceptable: false,
  title: 'Accepted without need',
  meaning:
    'An entry of accepted names a problem that did not occur, or one that cannot be accepted. It would hide a later slip, or hides nothing.',
  example: 'no container-total was found at "T2"; delete this entry of accepted',
};
export default rule;

/** The problems to report of an entry of `accepted` that turned nothing into a query. */
export function acceptedInVain(
  entry: { rule: string; where?: string },
  index: number,
  problems: readonly Problem[],
  rules: readonly Rule[],
  facts: Facts,
  prefix: string,
): Problem[] {
  const { report, problems: said } = collector(prefix);
  report(rule, {
    file: 'trial.yaml',
    place: facts.metadata.place(['accepted', index, 'rule']),
    found: entry.rule,
    message: reason(entry, problems, rules),
  });
  return said;
}

function reason(
  { rule: name, where }: { rule: string; where?: string },
  problems: readonly Problem[],
  rules: readonly Rule[],
): string {
  const known = rules.find((one) => one.rule === name);
  const can = rules.filter(({ acceptable }) => acceptable).map((one) => one.rule);
  const errors = rules.filter((one) => one.acceptable && one.severity === 'error').map((one) => one.rule);
  if (known === undefined) {
    const best = nearest(name, can);
    return best === null
      ? say('there is no rule {name}; of errors can be accepted {errors}, and every warning', {
          name: showText(name),
          errors: errors.join(', '),
        })
      : say('there is no rule {name}; did you mean "{near}"?', { name: showText(name), near: best });
  }
  if (!known.acceptable) {
    return say(
      '{rule} cannot be accepted, because without mending it the numbers cannot be trusted; of errors can be accepted {errors}, and every warning',
      { rule: name, errors: errors.join(', ') },
    );
  }
  const places = problems
    .filter((one) => one.rule === name)
    .map((one) => showText(one.where ?? 'trial.yaml'));
  return inVain(name, where === undefined ? null : showText(where), places.slice(0, 5).join(', '));
}

function inVain(name: string, where: string | null, places: string): string {
  if (where === null)
    return places === ''
      ? say('no {rule} was found; delete this entry of accepted', { rule: name })
      : say('no {rule} was found; it was found at {places}: write where', { rule: name, places });
  return places === ''
    ? say('no {rule} was found at {where}; delete this entry of accepted', { rule: name, where })
    : say('no {rule} was found at {where}; it was found at {places}: write where', {
        rule: name,
        where,
        places,
      });
}
