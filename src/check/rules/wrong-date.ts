import { explainDate } from '../date.ts';
import { pathInWords, type Refusal } from '../refusal.ts';
import type { Finding, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'wrong-date',
  severity: 'error',
  acceptable: false,
  title: 'Not a date',
  meaning: 'Dates are written year-month-day (ISO 8601), the one order that is read the same everywhere.',
  example: '"03/04/2025" can be read two ways; write year-month-day: 2025-04-03 or 2025-03-04',
};
export default rule;

export function explainWrongDate(refusal: Refusal): Finding {
  const text = String(refusal.error.data);
  const { fault, expected } = explainDate(text);
  return {
    file: refusal.file,
    place: refusal.yaml.place(refusal.path),
    found: text,
    expected,
    message: `${pathInWords(refusal.path)}: ${showText(text)} ${fault}`,
  };
}
