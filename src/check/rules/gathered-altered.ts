import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'gathered-altered',
  severity: 'warning',
  acceptable: false,
  title: 'Gathered file that was altered here',
  meaning:
    'A trial of another site is compared as that site published it. A copy that is no longer that is left out.',
  example: 'harvest.csv is not as it was gathered; the trial is left out: run `tankside gather` again',
};
export default rule;

export function reportGatheredAltered(report: Report, file: string, found: string | null, sum: string): void {
  report(rule, {
    file,
    found,
    expected: sum,
    message:
      found === null
        ? say('{file} is gone; the trial is left out: run `tankside gather` again', { file })
        : say('{file} is not as it was gathered; the trial is left out: run `tankside gather` again', {
            file,
          }),
  });
}
