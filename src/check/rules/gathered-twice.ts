import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'gathered-twice',
  severity: 'warning',
  acceptable: false,
  title: 'Gathered trial that is here already',
  meaning:
    'A trial that two sites publish, or that this site publishes itself, would count twice where cultivars are compared.',
  example:
    'harvest.csv is to the byte that of "autumn-lettuce-2025"; the trial is left out, so that it counts once',
};
export default rule;

/**
 * @param what by which it is known to be the same
 * @param other the id of the trial that it is a copy of
 */
export function reportGatheredTwice(report: Report, what: 'harvest.csv' | 'DOI', other: string): void {
  const values = { other: showText(other) };
  const message =
    what === 'DOI'
      ? say('its DOI is that of {other}; the trial is left out, so that it counts once', values)
      : say(
          'harvest.csv is to the byte that of {other}; the trial is left out, so that it counts once',
          values,
        );
  report(rule, { file: what === 'DOI' ? 'trial.json' : 'harvest.csv', found: other, message });
}
