import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';
import type { TrialText } from '../trial-text.ts';

const rule: Rule = {
  rule: 'same-title-and-season',
  severity: 'warning',
  acceptable: false,
  title: 'Two trials of one title and season',
  meaning:
    'Two trials with the same title in the same season are perhaps one folder copied, and would count twice when seasons are compared.',
  example: 'the title and season are those of autumn-lettuce-2025',
};
export default rule;

const plain = (text: string): string => text.normalize('NFKC').toLowerCase().replaceAll(/\s+/g, ' ').trim();

export function reportSameTitleAndSeason(trials: readonly TrialText[], report: Report): void {
  const first = new Map<string, string>();
  for (const { trial, file, place } of trials) {
    const { title, season } = trial.metadata;
    const key = `${plain(title)} ${String(season.year)} ${plain(season.name)}`;
    const before = first.get(key);
    if (before === undefined) first.set(key, trial.id);
    else {
      const message = say(
        'the title and season are those of {trial} too; is one folder a copy of the other?',
        { trial: showText(before) },
      );
      report(rule, { file, place: place(['title']), found: title, message });
    }
  }
}
