import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { CsvFault } from '../../read/csv.ts';

const rule: Rule = {
  rule: 'unpaired-quote',
  severity: 'error',
  acceptable: false,
  title: 'Quote that does not close',
  meaning:
    'A double quote at the start of a cell opens a text that runs on, over lines too, until the next one.',
  example: 'the double quote that opens here is never closed',
};
export default rule;

export function reportUnpairedQuote(report: Report, file: string, fault: CsvFault): void {
  const message =
    fault.kind === 'unterminated quote'
      ? say(
          'the double quote that opens here is never closed, so the rows after it are swallowed; close or delete it',
        )
      : say(
          'the double quote that opens here is closed in the middle of the cell; write a quote within a text twice ("")',
        );
  report(rule, { file, place: fault.place, found: '"', message });
}
