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
  const advice =
    file === 'harvest.csv' || file === 'trial.yaml' ? 'save it again' : 'save it again, or delete the file';
  report(rule, { file, message: `the file is empty; ${advice}` });
}
