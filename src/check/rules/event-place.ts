import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { nearest } from '../nearest.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'event-place',
  severity: 'warning',
  acceptable: true,
  title: 'Event at an unknown place',
  meaning:
    'The place of an event begins with a container; here with none that trial.yaml lists, though one is alike.',
  example: 'events[2].where is "T22 1 3", but there is no T22; did you mean "T2"?',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  if (metadata.lost.has('containers')) return;
  const known = (metadata.draft.containers ?? []).map(({ id }) => id);
  for (const [index, { where }] of (metadata.draft.events ?? []).entries()) {
    if (
      where === undefined ||
      known.some((id) => where === id || where.startsWith(id + ' ') || where.startsWith(id + ','))
    )
      continue;
    const [first = ''] = where.split(/[\s,;]+/);
    const best = nearest(first, known);
    // A place in words ("all tanks", "the inlet") is no slip.
    if (best === null || !/\d/.test(first)) continue;
    const message = `events[${String(index + 1)}].where is ${showText(where)}, but there is no ${first}; did you mean "${best}"?`;
    report(rule, {
      file: 'trial.yaml',
      place: metadata.place(['events', index, 'where']),
      found: where,
      expected: best,
      message,
    });
  }
}
