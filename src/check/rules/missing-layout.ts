import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'missing-layout',
  severity: 'error',
  acceptable: false,
  title: 'No layout',
  meaning: 'Without layout.csv each container needs the one treatment that all its positions had.',
  example: 'T2 has no level of cultivar; write layout.csv, or treatment: {cultivar: cobalt-wren} under T2',
};
export default rule;

/** @param others further containers that lack a treatment */
export function reportMissingLayout(
  report: Report,
  [container, factor, level]: readonly [container: string, factor: string, level: string],
  others: readonly string[],
): void {
  const message = say(
    'there is no layout.csv, and {container} has no level of {factor} in trial.yaml; write layout.csv, or {example} under {container}',
    { container, factor, example: `treatment: {${factor}: ${level}}` },
  );
  report(rule, {
    file: 'layout.csv',
    message:
      others.length === 0
        ? message
        : say('{message} (so too in {containers})', { message, containers: others.join(', ') }),
    where: others.length === 0 ? container : null,
  });
}
