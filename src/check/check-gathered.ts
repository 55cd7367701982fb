import { gatheredFiles, type GatheredRecord, type Origin } from '../model/gathered.ts';
import type { Cultivar } from '../model/library.ts';
import type { Problem } from '../model/problem.ts';
import type { Trial } from '../model/trial.ts';
import { sha256 } from '../read/sha256.ts';
import { checkCultivars } from './check-content.ts';
import { checkTrial, type CheckedTrial } from './check-trial.ts';
import { collector } from './collect.ts';
import { gatheredRecord } from './gathered-record.ts';
import { asObject, jsonValue } from './json-value.ts';
import { compareProblems } from './print-problem.ts';
import type { Report } from './rule.ts';
import { isAsFrozen } from './rules/frozen-version-altered.ts';
import { reportGatheredAltered } from './rules/gathered-altered.ts';
import { reportGatheredCultivarAlike } from './rules/gathered-cultivar-alike.ts';
import { reportGatheredFailsCheck } from './rules/gathered-fails-check.ts';
import { reportGatheredRecord } from './rules/gathered-record.ts';
import { reportGatheredTwice } from './rules/gathered-twice.ts';

type Files = ReadonlyMap<string, Uint8Array>;

/** What is kept of another site. */
export interface GatheredSite {
  title: string;
  address: string;
  /** Its folder under gathered/. */
  folder: string;
  /** Its cultivars.json; null where it publishes none. */
  cultivars: Uint8Array | null;
  /** Its trials' files by their ids. */
  trials: ReadonlyMap<string, Files>;
}

/** The trials of other sites that may take part, and why others may not: warnings, since nobody here can mend them. */
export function checkGathered(
  sites: readonly GatheredSite[],
  own: readonly Trial[],
  known: readonly Cultivar[],
  today: string,
): { trials: Trial[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const trials: Trial[] = [];
  const marks = new Map(own.flatMap((trial) => marksOf(trial).map(({ mark }) => [mark, trial.id] as const)));
  for (const site of sites) {
    const cultivars = cultivarsThere(site.cultivars);
    for (const [id, files] of site.trials) {
      const { report, problems: found } = collector(`gathered/${site.folder}/${id}/`);
      const trial = gatheredTrial(site, id, files, cultivars, today, report);
      const own = trial === null ? [] : marksOf(trial);
      const twin = own.find(({ mark }) => marks.has(mark));
      if (twin !== undefined) reportGatheredTwice(report, twin.what, marks.get(twin.mark)!);
      else if (trial !== null) {
        for (const { mark } of own) marks.set(mark, trial.id);
        reportGatheredCultivarAlike(report, trial, known);
        trials.push(trial);
      }
      for (const problem of found) problems.push(problem);
    }
  }
  problems.sort(compareProblems);
  return { trials, problems };
}

/** By what a trial is the same wherever it is published: its weights to the byte, and its own DOI. */
function marksOf({ files, metadata }: Trial): { what: 'harvest.csv' | 'DOI'; mark: string }[] {
  const harvest = files.get('harvest.csv');
  const dois = (metadata.related ?? []).filter(({ kind, of }) => kind === 'doi' && of === 'this');
  return [
    ...(harvest === undefined ? [] : [{ what: 'harvest.csv' as const, mark: sha256(harvest) }]),
    ...dois.map(({ value }) => ({
      what: 'DOI' as const,
      mark: value.toLowerCase().replace(/^(?:https?:\/\/(?:dx\.)?doi\.org\/|doi:)/, ''),
    })),
  ];
}

/** Another site's list of cultivars; null where it publishes none, or one that is faulty. */
export function cultivarsThere(bytes: Uint8Array | null): readonly Cultivar[] | null {
  return bytes === null ? null : checkCultivars(bytes).value;
}

function gatheredTrial(
  site: GatheredSite,
  id: string,
  files: Files,
  cultivars: readonly Cultivar[] | null,
  today: string,
  report: Report,
): Trial | null {
  const record = gatheredRecord(files.get('gathered.json'));
  if (record?.id !== id) {
    reportGatheredRecord(report);
    return null;
  }
  if (!isAsGathered(record, files, report)) return null;
  const { trial, problems } = checkFetched(id, files, cultivars, today);
  if (trial === null) reportGatheredFailsCheck(report, problems);
  return trial && { ...trial, id: `${site.folder}/${id}`, origin: originOf(site, record) };
}

function isAsGathered({ files: recorded }: GatheredRecord, files: Files, report: Report): boolean {
  const altered = recorded.filter(({ name, sha256: sum }) => {
    const bytes = files.get(name);
    if (bytes !== undefined && isAsFrozen(bytes, sum)) return false;
    reportGatheredAltered(report, name, bytes === undefined ? null : sha256(bytes), sum);
    return true;
  });
  return altered.length === 0;
}

function originOf(site: GatheredSite, record: GatheredRecord): Origin {
  const { id, page, data, identifier, gathered } = record;
  const { title, address, folder } = site;
  return { folder, title, address, id, page, data, identifier, gathered: gathered.slice(0, 10) };
}

/**
 * Holds a trial as another site publishes it against the rules that every trial is held against. Its trial.json
 * stands in for trial.yaml; its photographs stay where they are.
 */
export function checkFetched(
  id: string,
  files: Files,
  cultivars: readonly Cultivar[] | null,
  today: string,
): CheckedTrial {
  const given = asObject(jsonValue(files.get('trial.json') ?? new Uint8Array())) ?? {};
  const metadata = Object.entries(given).filter(([key]) => key !== 'id' && key !== 'photos');
  const folder = new Map<string, Uint8Array>();
  for (const name of gatheredFiles) {
    const bytes = files.get(name);
    if (bytes !== undefined && name !== 'trial.json') folder.set(name, bytes);
  }
  const text = JSON.stringify(Object.fromEntries(metadata), null, 2);
  folder.set('trial.yaml', new TextEncoder().encode(text));
  const checked = checkTrial(id, folder, { cultivars, today, prefix: '' });
  return {
    ...checked,
    trial: checked.trial && { ...checked.trial, cultivarsThere: cultivars ?? [] },
  };
}
