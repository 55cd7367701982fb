import { say } from '../../model/say.ts';
import type { Report, Rule } from '../rule.ts';
import type { WrongBytes } from '../../read/utf8.ts';

const rule: Rule = {
  rule: 'not-utf8',
  severity: 'error',
  acceptable: false,
  title: 'Not UTF-8',
  meaning:
    'The file is in an older way of writing letters as bytes. Read as UTF-8, its letters beyond a to z would come out wrong.',
  example: 'the file is not UTF-8: line 3 holds the byte 0xE9 (probably Latin-1); save it as "CSV UTF-8"',
};
export default rule;

export function reportNotUtf8(report: Report, file: string, wrong: WrongBytes): void {
  const byte = `0x${wrong.byte.toString(16).toUpperCase().padStart(2, '0')}`;
  const guess = wrong.guess === 'Latin-1' ? say('Latin-1 or Windows-1252') : wrong.guess;
  const message = say(
    file.endsWith('.csv')
      ? 'the file is not UTF-8 (it looks like {guess}): line {line} holds the byte {byte}; save it as "CSV UTF-8" from the spreadsheet, or with encoding UTF-8 from a text editor'
      : 'the file is not UTF-8 (it looks like {guess}): line {line} holds the byte {byte}; save it with encoding UTF-8 from the text editor',
    { guess, line: wrong.line, byte },
  );
  report(rule, {
    file,
    place: { line: wrong.line, column: 1 },
    found: byte,
    expected: 'UTF-8',
    message,
  });
}
