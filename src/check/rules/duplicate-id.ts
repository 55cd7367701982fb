import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Place } from '../../read/place.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'duplicate-id',
  severity: 'error',
  acceptable: false,
  title: 'The same id twice',
  meaning:
    'Containers, factors, levels, variables and cultivars are told apart by their ids, so each id is used once.',
  example: 'the container id "T1" is used twice; give one of the two another id',
  check,
};
export default rule;

/** What an id is of. */
type Kind = 'container' | 'factor' | 'variable' | 'level' | 'cultivar';

export function reportDuplicateId(report: Report, file: string, place: Place, kind: Kind, id: string): void {
  const message = say('the {kind} id {id} is used twice; give one of the two another id', {
    kind: say(kind),
    id: showText(id),
  });
  report(rule, { file, place, found: id, message });
}

function check({ metadata }: Facts, report: Report): void {
  const { containers = [], factors = [], variables = [] } = metadata.draft;
  const look = (kind: Kind, path: readonly (string | number)[], items: readonly { id: string }[]): void => {
    const seen = new Set<string>();
    for (const [index, { id }] of items.entries()) {
      if (seen.has(id))
        reportDuplicateId(report, 'trial.yaml', metadata.place([...path, index, 'id']), kind, id);
      seen.add(id);
    }
  };
  look('container', ['containers'], containers);
  look('factor', ['factors'], factors);
  look('variable', ['variables'], variables);
  for (const [index, { levels }] of factors.entries()) look('level', ['factors', index, 'levels'], levels);
}
