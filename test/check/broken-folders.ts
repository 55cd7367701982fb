/** The broken folders, and what the check says of one. */
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkAcrossTrials } from '../../src/check/check-across-trials.ts';
import { checkTrial } from '../../src/check/check-trial.ts';
import { checkFactSheets } from '../../src/check/fact-sheets.ts';
import { compareProblems } from '../../src/check/print-problem.ts';
import { filesPublished } from '../../src/commands/files-published.ts';
import { unnamed } from '../../src/commands/library-of.ts';
import { loadContent } from '../../src/commands/load-content.ts';
import { siteFindings } from '../../src/compute/site-findings.ts';
import type { FactSheet } from '../../src/model/fact-sheet.ts';
import type { Library } from '../../src/model/library.ts';
import type { Problem } from '../../src/model/problem.ts';
import type { Trial } from '../../src/model/trial.ts';
import { isTrialsNoFolder, listTrials, readSheetsFolder, readTrialFolder } from '../../src/read/folder.ts';
import { checkSheets } from '../../src/sheets/check-sheets.ts';
import { cultivars } from './good-folder.ts';

/** `<rule>` or `<rule>--<variant>`: the smallest folder with the fault, and expected.txt with what is printed. */
const broken = new URL('../broken/', import.meta.url);
export const names = readdirSync(broken).sort();
export const ruleOf = (name: string): string => name.split('--')[0]!;

export const pathOf = (name: string): string =>
  fileURLToPath(new URL(`${encodeURIComponent(name)}/`, broken));
const base = { cultivars, today: '2026-01-15' };

/** All problems of a broken folder: a trial's, or (where it holds site.yaml or trials/) those of a content folder; and those of the trials alone. */
export async function problemsOf(
  name: string,
): Promise<{ problems: Problem[]; own: readonly Problem[]; trials: (Trial | null)[] }> {
  const path = pathOf(name);
  if (existsSync(join(path, 'site.yaml'))) {
    const { site, problems } = await loadContent(path);
    const isMisnamed = problems.some(({ rule }) => rule === 'misnamed-file');
    const areLost = problems.some(({ file, severity }) => file === 'cultivars.yaml' && severity === 'error');
    return {
      problems: [...problems],
      own: problems,
      trials: site === null || isMisnamed || areLost || (await isTrialsNoFolder(path)) ? [null] : [],
    };
  }
  const ids = await listTrials(path);
  if (ids.length === 0) {
    const { trial, problems } = checkTrial(name, await readTrialFolder(path), { ...base, prefix: '' });
    const library = libraryOf(trial === null ? [] : [trial]);
    const ofSheets = checkSheets(library, { alone: true, ...filesPublished(library) });
    return { problems: [...problems, ...ofSheets].sort(compareProblems), own: problems, trials: [trial] };
  }
  const checked = [];
  for (const id of ids) {
    checked.push(
      checkTrial(id, await readTrialFolder(join(path, 'trials', id)), { ...base, prefix: 'trials/' }),
    );
  }
  const trials = checked.map(({ trial }) => trial);
  const sound = trials.filter((trial) => trial !== null);
  const across = checkAcrossTrials(sound, cultivars, 'trials/').problems;
  const sheets = checkFactSheets(await readSheetsFolder(path));
  const ofSheets = checkSheets(libraryOf(sound, sheets.value ?? []));
  const own = checked.flatMap(({ problems }) => problems);
  const all = [...own, ...across, ...sheets.problems, ...ofSheets];
  return { problems: all.sort(compareProblems), own, trials };
}

function libraryOf(trials: readonly Trial[], factSheets: readonly FactSheet[] = []): Library {
  return { site: unnamed, cultivars, trials: siteFindings(trials), factSheets, problems: [] };
}
