import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { showValue } from '../show-value.ts';

const rule: Rule = {
  rule: 'not-a-mapping',
  severity: 'error',
  acceptable: false,
  title: 'No mapping of keys to values',
  meaning: 'A metadata file is a mapping: each line a key, a colon and a value.',
  example: 'the file holds a list, not keys and values; begin with title: and what the trial is called',
};
export default rule;

export function reportNotAMapping(report: Report, file: string, value: unknown, wanted: string): void {
  report(rule, {
    file,
    place: { line: 1, column: 1 },
    found: showValue(value),
    expected: wanted,
    message: say('the file holds {found}, but must hold {wanted}', { found: showValue(value), wanted }),
  });
}
