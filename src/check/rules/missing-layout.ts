import { say } from '../../model/say.ts';
import { containersInOne } from '../containers-in-one.ts';
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

/** @param lacking each container without a level, once, with a factor of which it has none and a level of that */
export function reportMissingLayout(
  report: Report,
  lacking: readonly (readonly [container: string, factor: string, level: string])[],
): void {
  const found = lacking.map(([container, factor, level]) => {
    const message = say(
      'there is no layout.csv, and {container} has no level of {factor} in trial.yaml; write layout.csv, or {example} under {container}',
      { container, factor, example: `treatment: {${factor}: ${level}}` },
    );
    return { file: 'layout.csv', message, where: container };
  });
  for (const finding of containersInOne(found)) report(rule, finding);
}
