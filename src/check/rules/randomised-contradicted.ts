import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'randomised-contradicted',
  severity: 'warning',
  acceptable: true,
  title: 'Randomised and not',
  meaning:
    'The arrangement says that lots were drawn, and design.randomised that they were not. Without lots, a test cannot tell the treatments from their places.',
  example: 'design.arrangement is randomised blocks, but design.randomised is false',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  const { design } = metadata.draft;
  if (design === undefined || design.randomised) return;
  const { arrangement } = design;
  if (arrangement !== 'completely randomised' && arrangement !== 'randomised blocks') return;
  const message = say(
    'design.arrangement is {arrangement}, but design.randomised is false; were lots drawn?',
    { arrangement },
  );
  report(rule, {
    file: 'trial.yaml',
    place: metadata.place(['design', 'randomised']),
    found: 'false',
    message,
  });
}
