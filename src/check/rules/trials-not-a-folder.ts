import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'trials-not-a-folder',
  severity: 'error',
  acceptable: false,
  title: 'No folder of trials',
  meaning:
    'The trials of a site lie in its folder trials/, a folder each. Where a file has that name, no trial is found and the site would be published without any.',
  example: 'trials is a file; make it a folder, and put the folder of each trial into it',
};
export default rule;

export function reportTrialsNotAFolder(report: Report): void {
  report(rule, {
    file: 'trials',
    found: say('a file'),
    expected: say('a folder'),
    message: say('trials is a file; make it a folder, and put the folder of each trial into it'),
  });
}
