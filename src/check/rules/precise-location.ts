import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'precise-location',
  severity: 'error',
  acceptable: false,
  title: 'Location too precise',
  meaning:
    'A garden is somebody’s home. Two decimals of a degree, about a kilometre, are enough to know its climate.',
  example: 'site.latitude is 52.91734; write 52.92',
  check,
};
export default rule;

function check({ metadata }: Facts, report: Report): void {
  for (const key of ['latitude', 'longitude'] as const) {
    const value = metadata.draft.site?.[key];
    if (value === undefined || Number(value.toFixed(2)) === value) continue;
    const rounded = String(Number(value.toFixed(2)));
    report(rule, {
      file: 'trial.yaml',
      place: metadata.place(['site', key]),
      found: String(value),
      expected: rounded,
      message: say(
        'site.{key} is {value}, more precise than 2 decimals, which shows where somebody lives; write {rounded}',
        { key, value, rounded },
      ),
    });
  }
}
