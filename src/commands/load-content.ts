/** From a content folder to what its trials hold: read and checked, one trial at a time. */
import { basename, resolve } from 'node:path';
import { checkAcrossTrials } from '../check/check-across-trials.ts';
import { checkCultivars, checkSite } from '../check/check-content.ts';
import { checkGathered } from '../check/check-gathered.ts';
import { collector } from '../check/collect.ts';
import { checkFactSheets } from '../check/fact-sheets.ts';
import { type CheckContext, checkTrial } from '../check/check-trial.ts';
import { compareProblems } from '../check/print-problem.ts';
import { reportTrialsNotAFolder } from '../check/rules/trials-not-a-folder.ts';
import { siteFolder } from '../check/site-folder.ts';
import { siteFindings } from '../compute/site-findings.ts';
import type { FactSheet } from '../model/fact-sheet.ts';
import type { Cultivar, Library, SiteSettings } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import type { Trial } from '../model/trial.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import { readGathered } from '../read/gathered.ts';
import {
  isTrialsNoFolder,
  listTrials,
  readContentFiles,
  readSheetsFolder,
  readTrialFolder,
} from '../read/folder.ts';
import { checkSheets } from '../sheets/check-sheets.ts';
import { computeLibrary, unnamed } from './library-of.ts';
import { type Progress, progressOf } from './progress.ts';

/** A checked content folder. Trials with an error are left out; every problem is there, sorted. */
export interface CheckedContent {
  site: SiteSettings | null;
  cultivars: readonly Cultivar[];
  /** In the order of their ids. */
  trials: readonly Trial[];
  /** Those of other sites that may take part, in the order of their ids. */
  gathered: readonly Trial[];
  /** Those across trials. */
  factSheets: readonly FactSheet[];
  problems: readonly Problem[];
  /** How many trial folders there are, good or not. */
  folders: number;
  /** What was found already, since fact sheets are checked against findings; null where there are no sheets. */
  library: Library | null;
}

/** Today in UTC, as the checks take it: `TANKSIDE_TODAY` sets it, so that a build can be repeated. */
export function today(): string {
  return process.env['TANKSIDE_TODAY'] ?? new Date().toISOString().slice(0, 10);
}

/** Reads and checks a content folder. */
export async function loadContent(
  folder: string,
  progress: Progress = progressOf('Checking'),
): Promise<CheckedContent> {
  const content = resolve(folder);
  const shared = await readContentFiles(content);
  const site = checkSite(shared.site);
  const cultivars = checkCultivars(shared.cultivars);
  const problems: Problem[] = [...site.problems, ...cultivars.problems, ...(await problemOfTrials(content))];
  const trials: Trial[] = [];
  const ids = await listTrials(content);
  // A faulty cultivars.yaml is reported once, not once more for every cultivar.
  const context = { cultivars: cultivars.value, today: today() };
  const folders = readAhead(ids.map((id) => resolve(content, 'trials', id)));
  for (const [index, id] of ids.entries()) {
    const files = ((await folders.next()) as IteratorYieldResult<FolderFiles>).value;
    const checked = checkTrial(id, files, { ...context, prefix: 'trials/' });
    // One at a time: a long file may have more problems than a call may have arguments.
    for (const problem of checked.problems) problems.push(problem);
    if (checked.trial) trials.push(checked.trial);
    progress.done(index + 1, ids.length);
  }
  progress.end();
  const across = checkAcrossTrials(trials, cultivars.value ?? [], 'trials/');
  for (const problem of across.problems) problems.push(problem);
  const gathered = await loadGathered(content, site.value, across.trials, cultivars.value ?? []);
  for (const problem of gathered.problems) problems.push(problem);
  const sheets = checkFactSheets(await readSheetsFolder(content));
  for (const problem of sheets.problems) problems.push(problem);
  const checked: CheckedContent = {
    site: site.value,
    cultivars: cultivars.value ?? [],
    trials: across.trials,
    gathered: gathered.trials,
    factSheets: sheets.value ?? [],
    problems: problems.sort(compareProblems),
    folders: ids.length,
    library: null,
  };
  return withSheets(checked, ids);
}

/** A file where the folder of the trials must be. */
async function problemOfTrials(content: string): Promise<Problem[]> {
  const { report, problems } = collector('');
  if (await isTrialsNoFolder(content)) reportTrialsNotAFolder(report);
  return problems;
}

/** What was gathered from the sites that site.yaml lists; what lies there of others takes no part. */
async function loadGathered(
  content: string,
  site: SiteSettings | null,
  own: readonly Trial[],
  known: readonly Cultivar[],
) {
  const sites = [];
  for (const { title, address } of site?.gather ?? []) {
    const folder = siteFolder(address);
    sites.push({ title, address, folder, ...(await readGathered(content, folder)) });
  }
  return checkGathered(sites, own, known, today());
}

/** The content with its fact sheets checked against the findings, where it has any. */
function withSheets(content: CheckedContent, ids: readonly string[]): CheckedContent {
  const sheets = [...content.factSheets, ...content.trials.flatMap(({ factSheets }) => factSheets ?? [])];
  if (sheets.length === 0) return content;
  const library = computeLibrary(content);
  const faulty = new Set(ids.filter((id) => !content.trials.some((trial) => trial.id === id)));
  const problems = [...content.problems, ...checkSheets(library, { faulty })].sort(compareProblems);
  return { ...content, problems, library: { ...library, problems } };
}

/** How many folders are read while one is checked. */
const ahead = 8;

/** Trial folders in their order, the next few already being read. */
async function* readAhead(paths: readonly string[]): AsyncGenerator<FolderFiles> {
  const reading: Promise<FolderFiles>[] = [];
  for (let next = 0; next < paths.length || reading.length > 0;) {
    while (next < paths.length && reading.length < ahead) reading.push(readTrialFolder(paths[next++]!));
    yield await reading.shift()!;
  }
}

/**
 * Reads and checks one trial folder. The cultivars are those of the content folder that it lies in, where it
 * lies in one; paths in problems are relative to the trial folder.
 */
export async function loadTrial(
  folder: string,
): Promise<{ trial: Trial | null; problems: readonly Problem[] }> {
  const path = resolve(folder);
  const context = await contextOf(path);
  const { trial, problems } = checkTrial(basename(path), await readTrialFolder(path), context);
  if (trial?.factSheets === undefined) return { trial, problems };
  const library = {
    site: unnamed,
    cultivars: context.cultivars ?? [],
    trials: siteFindings([trial]),
    problems,
  };
  const ofSheets = checkSheets(library, { alone: true });
  return { trial, problems: [...problems, ...ofSheets].sort(compareProblems) };
}

/** What a check of one trial folder needs to know beside its files. */
export async function contextOf(folder: string): Promise<CheckContext> {
  const shared = await readContentFiles(resolve(folder, '..', '..'));
  const cultivars = shared.cultivars === null ? null : (checkCultivars(shared.cultivars).value ?? []);
  return { cultivars, today: today(), prefix: '' };
}
