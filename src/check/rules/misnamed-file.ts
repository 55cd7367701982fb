import { say } from '../../model/say.ts';
import { distance } from 'fastest-levenshtein';
import type { FolderFiles } from '../../read/folder-files.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'misnamed-file',
  severity: 'error',
  acceptable: false,
  title: 'File with almost the right name',
  meaning: 'A file of another name is passed over, and with it what it says.',
  example: '"Layout.CSV" looks like layout.csv; rename it to layout.csv',
  check,
};
export default rule;

const known = ['trial.yaml', 'layout.csv', 'harvest.csv', 'readings.csv', 'factsheet.mdx'];

/** The file that a name is a slip of: other case, a letter off, a copy's number, a second ending; null for other names. */
export function meantFile(name: string, files: readonly string[] = known): string | null {
  const plain = name
    .toLowerCase()
    .trim()
    .replace(/\.(csv|yaml|mdx)\.txt$/, '.$1')
    .replace(/\.yml$/, '.yaml')
    .replace(/[\s_-]*(\(\d+\)|\d+|copy|final|new)(?=\.[a-z]+$)/, '');
  const [, stem = '', ending = ''] = /^(.*)\.([a-z]+)$/.exec(plain) ?? [];
  const isTable = ['xlsx', 'xls', 'ods', 'tsv', 'numbers'].includes(ending);
  const found = files.find((one) => {
    const [knownStem = '', knownEnding = ''] = one.split('.');
    const isEnding = ending === knownEnding || (isTable && knownEnding === 'csv');
    return isEnding && distance(stem, knownStem) <= (isTable ? 0 : 2);
  });
  return found ?? null;
}

/** True for the very name of a file that is read. */
export function isTrialFile(path: string): boolean {
  return known.includes(path);
}

function check({ files, metadata }: Facts, report: Report): void {
  for (const path of files.keys()) {
    const best = known.includes(path) ? null : meantHere(path);
    if (best === null || files.has(best)) continue;
    // A finished trial without its harvest is told of the name where the file is missed.
    if (best === 'harvest.csv' && metadata.draft.status === 'finished') continue;
    const values = { path: showText(path), meant: best };
    const message = path.includes('/')
      ? say('{path} lies in a folder of its own, where it is not read; move it beside trial.yaml', values)
      : isSpreadsheet(path)
        ? say('{path} looks like {meant}; save it from the spreadsheet as CSV, named {meant}', values)
        : say('{path} looks like {meant}; rename it to {meant}', values);
    report(rule, { file: path, found: path, expected: best, message });
  }
}

const ofContent = ['site.yaml', 'cultivars.yaml'];
const foldersOfContent = ['trials', 'fact-sheets'];

/** What stands in a content folder by almost the right name, with the name that is meant, where nothing has that name. */
export function misnamedInContent(
  entries: readonly { name: string; isFolder: boolean }[],
): { name: string; meant: string }[] {
  const names = new Set(entries.map(({ name }) => name));
  return entries.flatMap(({ name, isFolder }) => {
    const plain = name
      .trim()
      .toLowerCase()
      .replaceAll(/[\s_]+/g, '-');
    const meant = isFolder
      ? (foldersOfContent.find((one) => one === plain || one === `${plain}s`) ?? null)
      : /site|cultivar/.test(plain)
        ? meantFile(name, ofContent)
        : null;
    return meant === null || names.has(meant) ? [] : [{ name, meant }];
  });
}

/** Reports what `misnamedInContent` found. */
export function reportMisnamedInContent(
  report: Report,
  { name, meant }: { name: string; meant: string },
): void {
  const message = say('{path} looks like {meant}; rename it to {meant}', { path: showText(name), meant });
  report(rule, { file: name, found: name, expected: meant, message });
}

/** The table that a path is a slip of: one with almost its name beside trial.yaml, or with its very name in a folder. */
export function meantHere(path: string): string | null {
  if (!path.includes('/')) return meantFile(path);
  // What was released, and what the grower brought in, lies where it should.
  const [, folder, name = ''] = /^([^/]+)\/([^/]+)$/.exec(path) ?? [];
  const isTable = name.endsWith('.csv') && known.includes(name);
  return isTable && folder !== 'versions' && folder !== 'source' ? name : null;
}

/** True where a file is missing, and another in the folder is meant as it. */
export function isMisnamed(files: FolderFiles, name: string): boolean {
  return !files.has(name) && [...files.keys()].some((path) => meantHere(path) === name);
}

/** True for a name that a spreadsheet program gives, of which another name alone makes no CSV. */
export function isSpreadsheet(path: string): boolean {
  return /\.(xlsx?|ods|numbers)$/i.test(path);
}
