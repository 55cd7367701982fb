import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import { placeAt } from '../../read/place.ts';

const rule: Rule = {
  rule: 'nul-byte',
  severity: 'error',
  acceptable: false,
  title: 'Byte of value zero',
  meaning: 'Text holds no zero bytes: the file is damaged, or is no text file at all.',
  example: 'line 4 holds a byte of value zero, so the file is damaged; save it again as text',
};
export default rule;

/** Reports the first zero byte; the answer is true where there is one. */
export function reportNulByte(report: Report, file: string, text: string): boolean {
  const offset = text.indexOf('\0');
  if (offset === -1) return false;
  const place = placeAt(text, offset);
  const message = say(
    'line {line} holds a byte of value zero, so the file is damaged; save it again as text',
    { line: place.line },
  );
  report(rule, { file, place, found: '\0', message });
  return true;
}
