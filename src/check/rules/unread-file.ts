import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unread-file',
  severity: 'error',
  acceptable: false,
  title: 'File that was not read',
  meaning:
    'A link that leads out of the folder could publish what nobody meant to, and a file that cannot be read cannot be checked.',
  example: '"photos/all" is a link that leaves the folder; copy the file into the folder',
  check,
};
export default rule;

function check({ files }: Facts, report: Report): void {
  for (const { path, reason } of files.unread ?? []) {
    const isLink = reason === 'a link that leaves the folder';
    const advice = isLink
      ? 'copy the file into the folder'
      : reason === 'too large'
        ? 'keep files under 100 MB'
        : 'mend or remove it';
    report(rule, { file: path, message: `${showText(path)} is ${reason}; ${advice}` });
  }
}
