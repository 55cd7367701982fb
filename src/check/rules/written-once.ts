import { sayCount } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'written-once',
  severity: 'error',
  acceptable: false,
  title: 'Column written in the first row alone',
  meaning:
    'A cell that is merged, or written once for the rows beneath it, is read as belonging to its own row only. Every row says for itself which plant, cut or day it is of.',
  example: '"cut" is empty in 22 rows, as if the one above held for them; write it in every row',
};
export default rule;

export function reportWrittenOnce(
  report: Report,
  file: string,
  { name, line, blanks }: { name: string; line: number; blanks: number },
): void {
  const message = sayCount(
    blanks,
    '{name} is empty in {count} row, as if the cell above held for it; write it in every row',
    '{name} is empty in {count} rows, as if the cell above held for them; write it in every row',
    { name: showText(name) },
  );
  report(rule, { file, place: { line, column: 1 }, found: '', message });
}
