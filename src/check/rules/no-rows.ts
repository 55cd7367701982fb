import { say } from '../../model/say.ts';
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
  const message = say(
    file === 'harvest.csv'
      ? 'the file has headings and no rows; write the rows'
      : 'the file has headings and no rows; write the rows, or delete the file',
  );
  report(rule, { file, place: { line: 1, column: 1 }, message });
}
