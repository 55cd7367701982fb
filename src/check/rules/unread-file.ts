import type { FolderFiles } from '../../read/folder-files.ts';
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

/** True for a file that is in the folder and was not read. */
export function isUnread(files: FolderFiles, path: string): boolean {
  return (files.unread ?? []).some((one) => one.path === path);
}

function check({ files }: Facts, report: Report): void {
  reportUnreadFiles(files, report);
}

export function reportUnreadFiles(files: FolderFiles, report: Report): void {
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
