import type { FactSheet } from '../model/fact-sheet.ts';
import type { Cultivar } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import type { Trial } from '../model/trial.ts';
import type { TakenIn } from '../read/take-in.ts';
import { trialFolders, type GivenFolders, type GivenTrial } from '../read/trial-folders.ts';
import { checkAcrossTrials } from './check-across-trials.ts';
import { checkCultivars, checkSite } from './check-content.ts';
import { checkTrial } from './check-trial.ts';
import { collector } from './collect.ts';
import { checkFactSheets } from './fact-sheets.ts';
import { compareProblems } from './print-problem.ts';
import { reportUnreadArchive } from './rules/unread-archive.ts';

/** What came of files that were given to a page, checked as the command line checks a folder. */
export interface CheckedTaken {
  kind: GivenFolders['kind'];
  /** The names of the trial folders there were, good or not. */
  names: readonly string[];
  /** Those without an error. */
  trials: readonly Trial[];
  cultivars: readonly Cultivar[];
  /** Those across trials. */
  factSheets: readonly FactSheet[];
  /** Sorted by file and line. */
  problems: readonly Problem[];
  /** The bytes of a file as problems name it; undefined where there is none. */
  bytesOf(file: string): Uint8Array | undefined;
}

/** What a trial is called whose files were given without their folder. */
const unnamed = 'the-trial';

/**
 * Checks files that were given to a page.
 *
 * @param today year-month-day
 * @param known cultivars to hold names against where no cultivars.yaml was given; null for none
 */
export function checkTaken(
  { files, refused }: TakenIn,
  today: string,
  known: readonly Cultivar[] | null = null,
): CheckedTaken {
  const { report, problems } = collector('');
  for (const { name, fault } of refused) reportUnreadArchive(report, name, fault);
  if (files.size === 0 && refused.length > 0) {
    const nothing = { names: [], trials: [], cultivars: [], factSheets: [], bytesOf: () => undefined };
    return { kind: 'trial', ...nothing, problems };
  }
  const folders = trialFolders(files);
  const shared = checkShared(folders, problems);
  const cultivars = folders.cultivars === null ? known : shared;
  const prefix = folders.kind === 'trial' ? '' : 'trials/';
  const checked = folders.trials.map(({ name, files: own }) =>
    checkTrial(name ?? unnamed, own, { cultivars, today, prefix }),
  );
  // One at a time: a long file may have more problems than a call may have arguments.
  for (const problem of checked.flatMap((one) => one.problems)) problems.push(problem);
  const sound = checked.flatMap(({ trial }) => (trial === null ? [] : [trial]));
  const across =
    folders.kind === 'trial'
      ? { trials: sound, problems: [] }
      : checkAcrossTrials(sound, cultivars ?? [], prefix);
  const sheets = checkFactSheets(folders.sheets);
  for (const problem of [...across.problems, ...sheets.problems]) problems.push(problem);
  problems.sort(compareProblems);
  return {
    kind: folders.kind,
    names: folders.trials.map(({ name }) => name ?? unnamed),
    trials: across.trials,
    cultivars: cultivars ?? [],
    factSheets: sheets.value ?? [],
    problems,
    bytesOf: (file) => bytesOf(folders, prefix, file),
  };
}

/** The cultivars, where they are sound; a content folder's own files are reported on. */
function checkShared(folders: GivenFolders, problems: Problem[]): readonly Cultivar[] | null {
  const site = folders.kind === 'content' ? checkSite(folders.site).problems : [];
  const cultivars = checkCultivars(folders.cultivars);
  problems.push(...site, ...cultivars.problems);
  return cultivars.value;
}

function bytesOf(folders: GivenFolders, prefix: string, file: string): Uint8Array | undefined {
  if (file === 'site.yaml' && folders.site !== null) return folders.site;
  if (file === 'cultivars.yaml' && folders.cultivars !== null) return folders.cultivars;
  if (folders.kind === 'content' && file.startsWith('fact-sheets/'))
    return folders.sheets.get(file.slice('fact-sheets/'.length));
  const own = ({ name }: GivenTrial): string => (prefix === '' ? '' : `${prefix}${name ?? unnamed}/`);
  const trial = folders.trials.find((one) => file.startsWith(own(one)));
  return trial?.files.get(file.slice(own(trial).length));
}
