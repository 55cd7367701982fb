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
    'harvest.csv is that of autumn-lettuce-2025 to the byte; the trial is left out, so that it counts once',
};
export default rule;

/** @param other the id of the trial that it is a copy of */
export function reportGatheredTwice(report: Report, other: string): void {
  const message = `harvest.csv is that of ${showText(other)} to the byte; the trial is left out, so that it counts once`;
  report(rule, { file: 'harvest.csv', found: other, message });
}
