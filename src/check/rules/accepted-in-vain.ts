import type { Problem } from '../../model/problem.ts';
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
    const advice =
      best === null
        ? `of errors can be accepted ${errors.join(', ')}, and every warning`
        : `did you mean "${best}"?`;
    return `there is no rule ${showText(name)}; ${advice}`;
  }
  if (!known.acceptable) {
    return `${name} cannot be accepted, because without mending it the numbers cannot be trusted; of errors can be accepted ${errors.join(', ')}, and every warning`;
  }
  const places = problems
    .filter((one) => one.rule === name)
    .map((one) => showText(one.where ?? 'trial.yaml'));
  const at = where === undefined ? '' : ` at ${showText(where)}`;
  const found =
    places.length === 0
      ? 'delete this entry of accepted'
      : `it was found at ${places.slice(0, 5).join(', ')}: write where`;
  return `no ${name} was found${at}; ${found}`;
}
