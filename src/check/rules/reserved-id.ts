import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { isReserved } from '../harvest-columns.ts';

const rule: Rule = {
  rule: 'reserved-id',
  severity: 'error',
  acceptable: false,
  title: 'Id that is a column already',
  meaning:
    'The ids of factors and variables head columns, so they must differ from the columns that every trial has and from each other.',
  example: 'the factor id "row" is the name of a column already; choose another',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const factors = (metadata.draft.factors ?? []).map(({ id }) => id);
  for (const key of ['factors', 'variables'] as const) {
    for (const [index, { id }] of (metadata.draft[key] ?? []).entries()) {
      const isFactorToo = key === 'variables' && factors.includes(id);
      if (!isReserved(id) && !isFactorToo) continue;
      const message = isFactorToo
        ? say('the variable id "{id}" is the id of a factor already; choose another', { id })
        : say(
            key === 'factors'
              ? 'the factor id "{id}" is the name of a column already; choose another'
              : 'the variable id "{id}" is the name of a column already; choose another',
            { id },
          );
      report(rule, { file: 'trial.yaml', place: metadata.place([key, index, 'id']), found: id, message });
    }
  }
}
