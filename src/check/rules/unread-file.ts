import { say } from '../../model/say.ts';
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
    report(rule, { file: path, message: words[reason](showText(path)) });
  }
}

const again = (): string =>
  say('make the archive again from the folder itself, with what the computer brings for it');

const words: Readonly<Record<UnreadReason, (path: string) => string>> = {
  'a link that leaves the folder': (path) =>
    say('{path} is a link that leaves the folder; copy the file into the folder', { path }),
  'not a regular file': (path) => say('{path} is not a regular file; mend or remove it', { path }),
  'not readable': (path) => say('{path} is not readable; mend or remove it', { path }),
  'not a folder': (path) => say('{path} is not a folder; make it one, or remove it', { path }),
  'not in the folder of a trial': (path) =>
    say(
      '{path} is not in the folder of a trial; make a folder for the trial beside it, and move the file there',
      { path },
    ),
  'too large': (path) => say('{path} is too large; keep files under 100 MB', { path }),
  'a link': (path) => say('{path} is a link; put the file itself into the archive', { path }),
  'outside the archive': (path) => say('{path} is outside the archive; {again}', { path, again: again() }),
  'in the archive twice': (path) =>
    say('{path} is in the archive twice; programs differ in which of the two they read; {again}', {
      path,
      again: again(),
    }),
  'locked with a password': (path) =>
    say('{path} is locked with a password; make the archive again without one', { path }),
  'packed in a rare way': (path) => say('{path} is packed in a rare way; {again}', { path, again: again() }),
  damaged: (path) =>
    say('{path} is damaged; what comes out is not what its checksum was made of; {again}', {
      path,
      again: again(),
    }),
};
