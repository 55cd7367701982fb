import type { Problem } from '../../model/problem.ts';
import { sayCount } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'gathered-fails-check',
  severity: 'warning',
  acceptable: false,
  title: 'Gathered trial that fails the check',
  meaning:
    'A trial of another site is held against the same rules as this site’s own. One with an error takes part in nothing.',
  example:
    'the trial has 1 error by the check of this site and is left out, the first: "12O" is not a number',
};
export default rule;

/** In words, what keeps a trial of another site out. */
export function failsCheck(problems: readonly Problem[]): string {
  const errors = problems.filter(({ severity }) => severity === 'error');
  const { file = '', line = null, message = '' } = errors[0] ?? {};
  // Its trial.yaml is made of trial.json, which has no such lines.
  const name = file.split('/').at(-1) === 'trial.yaml' ? 'trial.json' : (file.split('/').at(-1) ?? '');
  const where = name === 'trial.json' || line === null ? name : `${name}:${String(line)}`;
  return sayCount(
    errors.length,
    'the trial has {count} error by the check of this site and is left out, the first: {where}: {message}',
    'the trial has {count} errors by the check of this site and is left out, the first: {where}: {message}',
    { where, message },
  );
}

export function reportGatheredFailsCheck(report: Report, problems: readonly Problem[]): void {
  report(rule, { file: 'gathered.json', message: failsCheck(problems) });
}
