import type { Cultivar } from '../model/library.ts';
import { publishedMetadata } from '../model/published-metadata.ts';
import { hasError, type Problem } from '../model/problem.ts';
import type { EarlierVersion, Trial, TrialMetadata } from '../model/trial.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import { applyAccepted } from './apply-accepted.ts';
import { collector } from './collect.ts';
import { explainTables } from './explain-tables.ts';
import { factSheetsOfTrial } from './fact-sheets.ts';
import type { Facts, Metadata } from './facts.ts';
import { type FrozenVersion, frozenVersions, isVersion } from './frozen-versions.ts';
import { fullGrid } from './full-grid.ts';
import { joinAlike } from './join-alike.ts';
import { misspeltLevels } from './misspelt-levels.ts';
import { oneCellOnce } from './one-cell-once.ts';
import { compareProblems } from './print-problem.ts';
import { readHarvest } from './read-harvest.ts';
import { readLayout } from './read-layout.ts';
import { readMetadata } from './read-metadata.ts';
import { readReadings } from './read-readings.ts';
import type { Report } from './rule.ts';
import { rules } from './rules.ts';
import { reportNotATrial } from './rules/not-a-trial.ts';
import { isUnread, reportUnreadFiles } from './rules/unread-file.ts';
import { isMisnamed } from './rules/misnamed-file.ts';
import { hasTooManyPositions } from './rules/too-many-positions.ts';
import { compareVersions } from './versions.ts';

/** What a check needs to know beside the trial's own files. */
export interface CheckContext {
  /** The entries of cultivars.yaml; null where none is at hand, so that no cultivar is called unknown. */
  cultivars: readonly Cultivar[] | null;
  /** Year-month-day. */
  today: string;
  /** `trials/`, to name files from the content folder on; empty to name them from the trial's folder on. */
  prefix: string;
  /** Set where fact sheets are left unread, as in a frozen version: they show findings that are no longer those. */
  withoutSheets?: boolean;
  /** Headings of harvest.csv that belong elsewhere and are passed over, where a table stands for a whole trial. */
  alsoInHarvest?: readonly string[];
}

export interface CheckedTrial {
  /** Null where any error stands. */
  trial: Trial | null;
  /** All problems, sorted by file and line. */
  problems: Problem[];
}

/** Checks a trial's folder: all of its faults, and the trial where none of them is an error. */
export function checkTrial(id: string, files: FolderFiles, context: CheckContext): CheckedTrial {
  const { prefix, cultivars, today } = context;
  const path = prefix === '' ? '' : `${prefix}${id}/`;
  const { report, problems } = collector(path);
  const metadata = readTrialYaml(files, report);
  const ofMetadata = [...problems];
  const facts =
    metadata === null
      ? null
      : readFacts({ id, files, cultivars, today, metadata }, report, context.alsoInHarvest);
  if (facts === null) reportUnreadFiles(files, report);
  else {
    runRules(facts, report);
    explainTables(files, problems, facts.metadata, path, report, (other) => {
      const again = collector(path);
      again.problems.push(...ofMetadata);
      runRules(readFacts({ ...facts, files: other }, again.report, context.alsoInHarvest), again.report);
      return again.problems;
    });
  }
  const factSheets = context.withoutSheets === true ? [] : factSheetsOfTrial(files, report, path);
  const sifted = facts === null ? problems : misspeltLevels(problems, facts, report);
  const accepted = facts?.metadata.draft.accepted ?? [];
  const isHeeded = (rule: string): boolean =>
    accepted.some((one) => one.rule === rule && one.where !== undefined);
  const told = joinAlike(oneCellOnce(sifted, isHeeded), rowCounter(files, path), isHeeded);
  const settled = facts === null ? { problems: told, queries: [] } : applyAccepted(told, facts, path);
  settled.problems.sort(compareProblems);
  if (facts === null || hasError(settled.problems)) return { trial: null, problems: settled.problems };
  const earlier = earlierVersions(id, files, facts.metadata.draft.version ?? '', context);
  const trial: Trial = {
    id,
    // Without an error the schema refused nothing, so that the draft is whole. An e-mail that is not public goes no further.
    metadata: publishedMetadata(facts.metadata.draft as TrialMetadata),
    positions: facts.layout?.positions ?? [],
    harvest: facts.harvest?.records ?? [],
    readings: facts.readings?.rows ?? [],
    queries: settled.queries,
    files,
    ...(earlier.length > 0 ? { earlier } : {}),
    ...(factSheets.length > 0 ? { factSheets } : {}),
  };
  return { trial, problems: settled.problems };
}

function runRules(facts: Facts, report: Report): void {
  for (const { check } of rules) check?.(facts, report);
}

/** About how many rows the table of a path has, its headings left out; each is counted once. */
function rowCounter(files: FolderFiles, prefix: string): (file: string) => number {
  const counted = new Map<string, number>();
  return (file) => {
    const before = counted.get(file);
    if (before !== undefined) return before;
    let lines = 0;
    for (const byte of files.get(file.slice(prefix.length)) ?? []) if (byte === 10) lines += 1;
    const rows = Math.max(1, lines - 1);
    counted.set(file, rows);
    return rows;
  };
}

/** The frozen versions older than the present one, each checked as a folder of its own. */
function earlierVersions(
  id: string,
  files: FolderFiles,
  present: string,
  context: CheckContext,
): EarlierVersion[] {
  return frozenVersions(files)
    .filter(({ version }) => isVersion(version) && compareVersions(version, present) < 0)
    .map((frozen) => ({ version: frozen.version, trial: checkFrozen(id, files, frozen, context) }));
}

/** A frozen version checked by the rules of today; null where they find an error in it. */
export function checkFrozen(
  id: string,
  files: FolderFiles,
  frozen: FrozenVersion,
  context: CheckContext,
): Trial | null {
  // Photographs are no part of what is frozen; those of today stand in for them.
  const photographs = [...files].filter(([path]) => !path.startsWith('versions/') && path.includes('/'));
  return checkTrial(id, new Map([...photographs, ...frozen.files]), { ...context, withoutSheets: true })
    .trial;
}

function readTrialYaml(files: FolderFiles, report: Report): Metadata | null {
  const bytes = files.get('trial.yaml');
  if (bytes !== undefined) return readMetadata(bytes, report);
  // A trial.yaml that is there and cannot be read is reported as such.
  if (!isUnread(files, 'trial.yaml')) reportNotATrial(report, files);
  return null;
}

function readFacts(
  known: Omit<Facts, 'layout' | 'harvest' | 'readings'>,
  report: Report,
  also: readonly string[] = [],
): Facts {
  const { files, metadata } = known;
  // A grid beyond all measure is reported and not laid out.
  if (hasTooManyPositions(metadata.draft.containers ?? []))
    return { ...known, layout: null, harvest: null, readings: null };
  const bytesOf = (name: string): Uint8Array | undefined => files.get(name);
  const layoutBytes = bytesOf('layout.csv');
  const layout =
    layoutBytes === undefined
      ? fullGrid(metadata, report, isMisnamed(files, 'layout.csv'))
      : readLayout(layoutBytes, metadata, report);
  const harvestBytes = bytesOf('harvest.csv');
  const readingsBytes = bytesOf('readings.csv');
  return {
    ...known,
    layout,
    harvest: harvestBytes === undefined ? null : readHarvest(harvestBytes, metadata, layout, report, also),
    readings: readingsBytes === undefined ? null : readReadings(readingsBytes, metadata, report),
  };
}
