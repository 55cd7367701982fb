import type { FactSheet } from '../model/fact-sheet.ts';
import { say } from '../model/say.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import { collector } from './collect.ts';
import type { Checked } from './check-content.ts';
import { factSheetOf } from './fact-sheet-file.ts';
import { compareProblems } from './print-problem.ts';
import type { Report } from './rule.ts';
import sheetFileName from './rules/sheet-file-name.ts';
import { reportUnreadFiles } from './rules/unread-file.ts';
import { showText } from './show-value.ts';
import { isTrialSheet } from './trial-sheet.ts';

/** A language tag as file names have it: a language of two or three letters, and perhaps its region. */
const tag = /^[a-z]{2,3}(-[A-Z]{2}|-\d{3})?$/;

/** Stands for what trial.yaml says already, so that a sheet of one trial needs no front matter. */
const impliedByTrial = {
  title: 'That of its trial',
  summary: 'The question of its trial, and its summary',
  trials: ['its-own'],
  date: '2000-01-01',
};

/** The fact sheets of a trial's folder, factsheet.mdx first; those that cannot be read are left out and reported. */
export function factSheetsOfTrial(files: FolderFiles, report: Report, prefix: string): FactSheet[] {
  const paths = [...files.keys()].filter(isTrialSheet).sort(ownLanguageFirst);
  return paths.flatMap((path) => {
    const language = path.slice('factsheet.'.length, -'.mdx'.length);
    if (path !== 'factsheet.mdx' && !tag.test(language)) return reportName(path, path, report);
    return factSheetOf(path, files.get(path)!, impliedByTrial, report, prefix) ?? [];
  });
}

const id = /^[a-z0-9][a-z0-9-]{1,62}[a-z0-9]$/;

/** The fact sheets across trials, which lie in `fact-sheets/` of the content folder. */
export function checkFactSheets(files: FolderFiles): Checked<readonly FactSheet[]> {
  const folder = 'fact-sheets/';
  const { report, problems } = collector(folder);
  reportUnreadFiles(files, report);
  const paths = [...files.keys()].filter((path) => path.endsWith('.mdx')).sort(ownLanguageFirst);
  const sheets = paths.flatMap((path) => {
    const [name = '', language, ...more] = path.slice(0, -'.mdx'.length).split('.');
    const sound = id.test(name) && (language === undefined || tag.test(language)) && more.length === 0;
    if (!sound) return reportName(path, path, report);
    return factSheetOf(path, files.get(path)!, null, report, folder) ?? [];
  });
  problems.sort(compareProblems);
  return { value: sheets, problems };
}

/** `a.mdx` before `a.es.mdx` before `b.mdx`. */
function ownLanguageFirst(a: string, b: string): number {
  const key = (path: string): string => path.slice(0, -'mdx'.length);
  return key(a) < key(b) ? -1 : 1;
}

function reportName(file: string, path: string, report: Report): [] {
  const want = isTrialSheet(path)
    ? say('factsheet.mdx, or with a language tag factsheet.es.mdx')
    : say(
        'lower-case letters, digits and hyphens, as in spring-lettuces.mdx, or with a language tag spring-lettuces.es.mdx',
      );
  report(sheetFileName, {
    file,
    found: path,
    expected: want,
    message: say('{found} is no name of a fact sheet; write {want}', { found: showText(path), want }),
  });
  return [];
}
