import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'empty-file',
  severity: 'error',
  acceptable: false,
  title: 'Empty file',
  meaning: 'A file of no bytes, or of nothing but blanks, is most often the sign of a failed save.',
  example: 'the file is empty; write its rows, or delete the file',
};
export default rule;

export function reportEmptyFile(report: Report, file: string): void {
  const isNeeded = file === 'harvest.csv' || file === 'trial.yaml';
  const message = isNeeded
    ? say('the file is empty; save it again')
    : say('the file is empty; save it again, or delete the file');
  report(rule, { file, message });
}
