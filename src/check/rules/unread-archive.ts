import { say } from '../../model/say.ts';
import type { ArchiveFault } from '../../read/unzip.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'unread-archive',
  severity: 'error',
  acceptable: false,
  title: 'Archive or folder that was not taken in',
  meaning:
    'The page of checks reads a zip archive as the folder that it holds. One that is cut off, or more than any trial has, is left alone.',
  example: '"autumn.zip" is no zip archive, or is cut off; make it again, or give the folder itself',
};
export default rule;

const words: Readonly<Record<ArchiveFault, (name: string) => string>> = {
  'no zip': (name) =>
    say('{name} is no zip archive, or is cut off; make it again, or give the folder itself', { name }),
  'too large': (name) =>
    say('{name} holds more than 500 MB; give one trial at a time, and leave out what is no part of it', {
      name,
    }),
  'too many files': (name) =>
    say('{name} holds more than 20 000 files; give the folder of one trial', { name }),
};

/** @param name the archive's; empty for all that was given together */
export function reportUnreadArchive(report: Report, name: string, fault: ArchiveFault): void {
  const message = words[fault](name === '' ? say('what was given') : showText(name));
  report(rule, { file: name === '' ? 'all' : name, found: name || null, message });
}
