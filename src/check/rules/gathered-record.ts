import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'gathered-record',
  severity: 'warning',
  acceptable: false,
  title: 'Gathered trial without its record',
  meaning:
    'A trial of another site is shown only with where and when it came from, which stands in gathered.json beside it.',
  example: 'gathered.json is missing or not whole; the trial is left out: run `tankside gather` again',
};
export default rule;

export function reportGatheredRecord(report: Report): void {
  report(rule, {
    file: 'gathered.json',
    message: say('gathered.json is missing or not whole; the trial is left out: run `tankside gather` again'),
  });
}
