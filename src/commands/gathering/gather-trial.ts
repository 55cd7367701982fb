import { checkFetched } from '../../check/check-gathered.ts';
import type { Announced } from '../../check/gathered-index.ts';
import { gatheredRecord } from '../../check/gathered-record.ts';
import { asObject, jsonValue } from '../../check/json-value.ts';
import { failsCheck } from '../../check/rules/gathered-fails-check.ts';
import { compareVersions } from '../../check/versions.ts';
import type { GatheredFile, GatheredRecord } from '../../model/gathered.ts';
import type { Cultivar } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import { sha256 } from '../../publish/sha256.ts';
import { type Allowance, fetchVerified } from './fetch-verified.ts';

type Files = ReadonlyMap<string, Uint8Array>;

/** What became of one dataset of another site. */
export type TrialOutcome =
  | { kind: 'as it was' }
  | { kind: 'taken'; files: ReadonlyMap<string, Uint8Array | string> }
  | { kind: 'kept'; rule: 'gather-refused' | 'gather-changed' | 'gathered-fails-check'; why: string };

export interface TrialContext {
  site: GatheredRecord['site'];
  /** That site's list of cultivars; null where it publishes none. */
  cultivars: readonly Cultivar[] | null;
  today: string;
  now: () => Date;
  allowance: Allowance;
}

/**
 * Fetches a dataset where it is newer than the copy at hand, verifies each file by the checksum that its site
 * publishes and holds the trial against every rule. Files that did not change are not fetched again.
 *
 * @param kept the files of the last good copy; empty where there is none
 */
export async function gatherTrial(
  announced: Announced,
  kept: Files,
  context: TrialContext,
): Promise<TrialOutcome> {
  const copy = wholeRecord(kept);
  if (copy !== null) {
    const known = compared(announced, copy);
    if (known !== 'newer') return known;
  }
  const files = new Map<string, Uint8Array>();
  const recorded: GatheredFile[] = [];
  for (const file of announced.files) {
    const before = copy?.files.find(({ name, sha256: sum }) => name === file.name && sum === file.sha256);
    const fetched = before
      ? { bytes: kept.get(file.name)!, validators: before }
      : await fetchVerified(file, context.allowance);
    if (typeof fetched === 'string') return { kind: 'kept', rule: 'gather-refused', why: fetched };
    const { etag, last_modified } = fetched.validators;
    files.set(file.name, fetched.bytes);
    recorded.push({ ...file, etag, last_modified });
  }
  const fault = unlike(announced, files.get('trial.json')!);
  if (fault !== null) return { kind: 'kept', rule: 'gather-refused', why: fault };
  const { trial, problems } = checkFetched(announced.id, files, context.cultivars, context.today);
  if (trial === null) return { kind: 'kept', rule: 'gathered-fails-check', why: failsCheck(problems) };
  const { id, version, page, data, identifier } = announced;
  const gathered = context
    .now()
    .toISOString()
    .replace(/\.\d+Z$/, 'Z');
  const record: GatheredRecord = {
    form: 1,
    site: context.site,
    id,
    version,
    page,
    data,
    identifier,
    gathered,
    files: recorded,
  };
  return {
    kind: 'taken',
    files: new Map<string, Uint8Array | string>([
      ...files,
      ['gathered.json', `${JSON.stringify(record, null, 2)}\n`],
    ]),
  };
}

/** The record of a copy whose files are all as they were gathered, else null: it is then fetched anew. */
function wholeRecord(kept: Files): GatheredRecord | null {
  const record = gatheredRecord(kept.get('gathered.json'));
  const isWhole = record?.files.every(({ name, sha256: sum }) => {
    const bytes = kept.get(name);
    return bytes !== undefined && sha256(bytes) === sum;
  });
  return isWhole === true ? record : null;
}

function compared(announced: Announced, copy: GatheredRecord): TrialOutcome | 'newer' {
  const order = compareVersions(announced.version, copy.version);
  if (order > 0) return 'newer';
  const kept = (why: string): TrialOutcome => ({ kind: 'kept', rule: 'gather-changed', why });
  if (order < 0) {
    return kept(
      say('its site went back from version {from} to {to}', { from: copy.version, to: announced.version }),
    );
  }
  const sums = ({ files }: { files: readonly { name: string; sha256: string }[] }) =>
    files
      .map(({ name, sha256: sum }) => `${name} ${sum}`)
      .sort()
      .join();
  if (sums(announced) === sums(copy)) return { kind: 'as it was' };
  return kept(say('its site changed the data under the same version, {version}', { version: copy.version }));
}

/** What in trial.json is not as the index says; null where all is. */
function unlike({ id, version }: Announced, bytes: Uint8Array): string | null {
  const metadata = asObject(jsonValue(bytes));
  if (metadata === null) return say('trial.json is no JSON of keys and values');
  if (metadata['id'] !== id) return say('the id in trial.json is another than the index says');
  if (metadata['version'] !== version) return say('the version in trial.json is another than the index says');
  return metadata['status'] === 'finished' ? null : say('trial.json is not of a finished trial');
}
