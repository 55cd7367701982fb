import type { FolderFiles, Unread, UnreadReason } from '../../read/folder-files.ts';
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

export function reportUnreadFiles(files: { readonly unread?: readonly Unread[] }, report: Report): void {
  for (const { path, reason } of files.unread ?? []) {
    report(rule, { file: path, message: `${showText(path)} is ${reason}; ${advice[reason]}` });
  }
}

const again = 'make the archive again from the folder itself, with what the computer brings for it';

const advice: Readonly<Record<UnreadReason, string>> = {
  'a link that leaves the folder': 'copy the file into the folder',
  'not a regular file': 'mend or remove it',
  'not readable': 'mend or remove it',
  'not a folder': 'make it one, or remove it',
  'not in the folder of a trial': 'make a folder for the trial beside it, and move the file there',
  'too large': 'keep files under 100 MB',
  'a link': 'put the file itself into the archive',
  'outside the archive': again,
  'in the archive twice': `programs differ in which of the two they read; ${again}`,
  'locked with a password': 'make the archive again without one',
  'packed in a rare way': again,
  damaged: `what comes out is not what its checksum was made of; ${again}`,
};
