import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { isSpreadsheet, meantHere } from './misnamed-file.ts';
import { isUnread } from './unread-file.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'missing-file',
  severity: 'error',
  acceptable: false,
  title: 'Missing file',
  meaning: 'A file that is needed is not in the folder.',
  example: 'there is no harvest.csv; a finished trial needs one',
  check,
};
export default rule;

export function reportMissingFile(report: Report, file: string, why: string): void {
  report(rule, { file, expected: file, message: say('there is no {file}; {why}', { file, why }) });
}

function check({ files, metadata }: Facts, report: Report): void {
  if (metadata.draft.status !== 'finished' || files.has('harvest.csv')) return;
  if (isUnread(files, 'harvest.csv')) return;
  const meant = [...files.keys()].find((path) => meantHere(path) === 'harvest.csv');
  reportMissingFile(report, 'harvest.csv', adviceOf(meant));
}

function adviceOf(meant: string | undefined): string {
  if (meant === undefined) return say('a finished trial needs one');
  const values = { path: showText(meant), meant: 'harvest.csv' };
  if (meant.includes('/')) return say('move {path} beside trial.yaml', values);
  return isSpreadsheet(meant)
    ? say('save {path} from the spreadsheet as CSV, named {meant}', values)
    : say('rename {path} to {meant}', values);
}
