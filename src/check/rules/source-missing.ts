import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'source-missing',
  severity: 'note',
  acceptable: false,
  title: 'Original spreadsheet that is not there',
  meaning:
    'The spreadsheet that harvest.csv was brought in from is kept in the trial folder, so that every weight can be traced to where it was first written. It is not published: a published trial has none.',
  example: 'source/weights.xlsx is not in the folder; put the spreadsheet back if you have it',
  check,
};
export default rule;

function check({ metadata, files }: Facts, report: Report): void {
  const told = new Set<string>();
  for (const [index, { file }] of (metadata.draft.sources ?? []).entries()) {
    if (files.has(file) || told.has(file)) continue;
    told.add(file);
    report(rule, {
      file: 'trial.yaml',
      place: metadata.place(['sources', index, 'file']),
      found: file,
      message: say('{file} is not in the folder; put the spreadsheet back if you have it', {
        file: showText(file),
      }),
    });
  }
}
