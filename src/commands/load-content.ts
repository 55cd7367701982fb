/** From a content folder to what its trials hold: read and checked, one trial at a time. */
import { basename, resolve } from 'node:path';
import { checkAcrossTrials } from '../check/check-across-trials.ts';
import { checkCultivars, checkSite } from '../check/check-content.ts';
import { checkGathered } from '../check/check-gathered.ts';
import { collector } from '../check/collect.ts';
import { checkFactSheets } from '../check/fact-sheets.ts';
import { type CheckContext, checkTrial } from '../check/check-trial.ts';
import { compareProblems } from '../check/print-problem.ts';
import { misnamedInContent, reportMisnamedInContent } from '../check/rules/misnamed-file.ts';
import { reportTrialsNotAFolder } from '../check/rules/trials-not-a-folder.ts';
import { reportUnreadFiles } from '../check/rules/unread-file.ts';
import { siteFolder } from '../check/site-folder.ts';
import { siteLanguage } from '../check/site-language.ts';
import { siteFindings } from '../compute/site-findings.ts';
import type { FactSheet } from '../model/fact-sheet.ts';
import type { Findings } from '../model/findings.ts';
import { showFirst } from '../model/first-units.ts';
import { type Language, writeIn } from '../model/language.ts';
import type { Cultivar, Library, SiteSettings } from '../model/library.ts';
import '../model/messages.ts';
import type { Problem } from '../model/problem.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import type { Unread } from '../read/folder-files.ts';
import { readGathered } from '../read/gathered.ts';
import {
  entriesOfContent,
  isTrialsNoFolder,
  listTrials,
  readContentFiles,
  readSheetsFolder,
  readTrialFolder,
  unreadOfContent,
} from '../read/folder.ts';
import { checkSheets } from '../sheets/check-sheets.ts';
import { type Crew, noCrew, shareOut } from './crew/crew.ts';
import { examine } from './crew/tasks.ts';
import { filesPublished } from './files-published.ts';
import { computeLibrary, unnamed } from './library-of.ts';
import { type Progress, progressOf } from './progress.ts';

/** A checked content folder. Trials with an error are left out; every problem is there, sorted. */
export interface CheckedContent {
  site: SiteSettings | null;
  /** That which site.yaml asks for, though it may have faults. */
  language: Language;
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
  /** The findings that are there already, by the trial's id. */
  computed: ReadonlyMap<string, Findings>;
  /** What was found already, since fact sheets are checked against findings; null where there are no sheets. */
  library: Library | null;
}

/** While one folder is checked, the next are read. */
const handsHere = 4;

/** Today in UTC, as the checks take it: `TANKSIDE_TODAY` sets it, so that a build can be repeated. */
export function today(): string {
  return process.env['TANKSIDE_TODAY'] ?? new Date().toISOString().slice(0, 10);
}

/**
 * Reads and checks a content folder, and writes in the language of its site from then on. A crew takes part, and
 * computes what it has checked.
 */
export async function loadContent(
  folder: string,
  progress: Progress = progressOf(() => say('Checking')),
  crew: Crew = noCrew,
): Promise<CheckedContent> {
  const content = resolve(folder);
  const shared = await readContentFiles(content);
  const language = siteLanguage(shared.site);
  writeIn(language);
  const unread = await unreadOfContent(content);
  const misnamed = misnamedInContent(await entriesOfContent(content));
  const isUnread = (file: string): boolean =>
    unread.some(({ path }) => path === file) || misnamed.some(({ meant }) => meant === file);
  // A file that is there and cannot be read is reported as such, and not called missing or empty.
  const site = isUnread('site.yaml') ? notRead : checkSite(shared.site);
  showFirst(site.value?.units ?? 'metric');
  const cultivars = isUnread('cultivars.yaml') ? notRead : checkCultivars(shared.cultivars);
  const problems: Problem[] = [
    ...site.problems,
    ...cultivars.problems,
    ...(await problemsOfPlaces(content, unread, misnamed)),
  ];
  const trials: Trial[] = [];
  const ids = await listTrials(content);
  // A faulty cultivars.yaml is reported once, not once more for every cultivar.
  const context = { cultivars: cultivars.value, today: today(), prefix: 'trials/' };
  const others = crew.hands('examine');
  const withFindings = others.length > 0;
  const toExamine = ids.map((id) => {
    return { folder: resolve(content, 'trials', id), context, language, withFindings };
  });
  const computed = new Map<string, Findings>();
  const hands = [...others, ...Array.from({ length: handsHere }, () => examine)];
  for (const examined of await shareOut(toExamine, hands, progress)) {
    // One at a time: a long file may have more problems than a call may have arguments.
    for (const problem of examined.problems) problems.push(problem);
    if (examined.trial) trials.push(examined.trial);
    if (examined.trial && examined.findings) computed.set(examined.trial.id, examined.findings);
  }
  const across = checkAcrossTrials(trials, cultivars.value ?? [], 'trials/');
  for (const problem of across.problems) problems.push(problem);
  const gathered = await loadGathered(content, site.value, across.trials, cultivars.value ?? []);
  for (const problem of gathered.problems) problems.push(problem);
  const sheets = checkFactSheets(await readSheetsFolder(content));
  for (const problem of sheets.problems) problems.push(problem);
  const checked: CheckedContent = {
    site: site.value,
    language,
    cultivars: cultivars.value ?? [],
    trials: across.trials,
    gathered: gathered.trials,
    factSheets: sheets.value ?? [],
    problems: problems.sort(compareProblems),
    folders: ids.length,
    computed,
    library: null,
  };
  return withSheets(checked, ids);
}

const notRead = { value: null, problems: [] };

/** A file where the folder of the trials must be, and what else cannot be read where it stands. */
async function problemsOfPlaces(
  content: string,
  unread: readonly Unread[],
  misnamed: readonly { name: string; meant: string }[],
): Promise<Problem[]> {
  const { report, problems } = collector('');
  reportUnreadFiles({ unread }, report);
  for (const one of misnamed) reportMisnamedInContent(report, one);
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
  const problems = [
    ...content.problems,
    ...checkSheets(library, { faulty, ...filesPublished(library) }),
  ].sort(compareProblems);
  return { ...content, problems, library: { ...library, problems } };
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
  const ofSheets = checkSheets(library, { alone: true, ...filesPublished(library) });
  return { trial, problems: [...problems, ...ofSheets].sort(compareProblems) };
}

/**
 * What a check of one trial folder needs to know beside its files. From then on is written in the language of the
 * site that it lies in, where it lies in one.
 */
export async function contextOf(folder: string): Promise<CheckContext> {
  const shared = await readContentFiles(resolve(folder, '..', '..'));
  writeIn(siteLanguage(shared.site));
  const cultivars = shared.cultivars === null ? null : (checkCultivars(shared.cultivars).value ?? []);
  return { cultivars, today: today(), prefix: '' };
}
