import type { Report, Rule } from '../rule.ts';

const rule: Rule = {
  rule: 'no-rows',
  severity: 'error',
  acceptable: false,
  title: 'Headings only',
  meaning: 'The file has its headings and no row beneath.',
  example: 'the file has headings and no rows',
};
export default rule;

export function reportNoRows(report: Report, file: string): void {
  const advice = file === 'harvest.csv' ? 'write the rows' : 'write the rows, or delete the file';
  const message = `the file has headings and no rows; ${advice}`;
  report(rule, { file, place: { line: 1, column: 1 }, message });
}
