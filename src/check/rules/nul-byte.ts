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
  // Spreadsheets of today are zip archives inside, those of before 2007 begin with D0 CF.
  if (file.endsWith('.csv') && text.startsWith('PK')) {
    const message = say(
      'the file is a spreadsheet under another name; save it as "CSV UTF-8" from the spreadsheet',
    );
    report(rule, { file, place: { line: 1, column: 1 }, message });
    return true;
  }
  const message = say(
    'line {line} holds a byte of value zero, so the file is damaged; save it again as text',
    { line: place.line },
  );
  report(rule, { file, place, found: '\0', message });
  return true;
}
