import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { cultivarsThere } from '../../check/check-gathered.ts';
import { type AnnouncedFile, gatheredIndex } from '../../check/gathered-index.ts';
import { siteFolder } from '../../check/site-folder.ts';
import type { Cultivar } from '../../model/library.ts';
import { say } from '../../model/say.ts';
import { sha256 } from '../../publish/sha256.ts';
import { gatheredIds } from '../../read/gathered.ts';
import { readTrialFolder } from '../../read/folder.ts';
import { replaceFile } from '../freeze.ts';
import type { Progress } from '../progress.ts';
import { fetchBytes } from './fetch-bytes.ts';
import { type Allowance, fetchVerified } from './fetch-verified.ts';
import { gatherTrial } from './gather-trial.ts';
import { keepFolder, mendFolder } from './keep.ts';
import type { Limits } from './limits.ts';
import { readSiteCopy, type SiteCopy, writeSiteCopy } from './site-copy.ts';

/** Tells of a fault: the rule, the trial's id or null for the whole site, and a sentence. */
export type Warn = (rule: string, id: string | null, message: string) => void;

export interface SiteContext {
  /** The folder gathered/ of the content folder. */
  gathered: string;
  today: string;
  now: () => Date;
  limits: Limits;
  warn: Warn;
  progress: Progress;
}

/** How many trials of a site were taken, and how many were as they were. */
export interface SiteOutcome {
  taken: number;
  asTheyWere: number;
}

/** Gathers from one site; whatever goes wrong leaves the last good copies, and is told. */
export async function gatherSite(
  site: { title: string; address: string },
  context: SiteContext,
): Promise<SiteOutcome> {
  const { limits, warn, progress } = context;
  const folder = join(context.gathered, siteFolder(site.address));
  await mendFolder(folder);
  const asked = new URL('data/index.json', `${site.address.replace(/\/*$/, '')}/`).href;
  const outcome = { taken: 0, asTheyWere: 0 };
  const copy = await currentIndex(folder, asked, limits, warn);
  const index = copy && announcedBy(copy, warn);
  if (copy === null || index === null) return outcome;
  for (const fault of index.faults) warn('gather-refused', null, say('{fault}; it is left out', { fault }));
  const allowance: Allowance = {
    limits,
    bytes: limits.siteBytes,
    until: performance.now() + limits.siteMilliseconds,
  };
  await mkdir(folder, { recursive: true });
  const cultivars = await cultivarsOf(index.cultivars, folder, allowance, warn);
  for (const [done, announced] of index.datasets.entries()) {
    const { id } = announced;
    const kept = await readTrialFolder(join(folder, id));
    const { today, now } = context;
    const result = await gatherTrial(announced, kept, { site, cultivars, today, now, allowance });
    if (result.kind === 'taken') {
      await keepFolder(join(folder, id), result.files);
      outcome.taken += 1;
    } else if (result.kind === 'as it was') outcome.asTheyWere += 1;
    else {
      const { rule, why } = result;
      warn(rule, id, kept.size > 0 ? say('{why}; the last good copy stays', { why }) : why);
    }
    progress.done(done + 1, index.datasets.length);
  }
  progress.end();
  const listed = new Set(index.listed);
  for (const id of (await gatheredIds(folder)).filter((each) => !listed.has(each))) {
    warn(
      'gather-withdrawn',
      id,
      say('its site lists it no longer; the last good copy stays until you delete it'),
    );
  }
  await writeSiteCopy(folder, asked, copy);
  return outcome;
}

/** The site's index as it is now, or null with the reason told. */
async function currentIndex(
  folder: string,
  asked: string,
  limits: Limits,
  warn: Warn,
): Promise<SiteCopy | null> {
  const last = await readSiteCopy(folder, asked);
  const { indexBytes: mostBytes, milliseconds } = limits;
  const known = last === null ? {} : { known: last.validators };
  const fetched = await fetchBytes(asked, { mostBytes, milliseconds, ...known });
  if (fetched.kind === 'unchanged') return last;
  if (fetched.kind === 'bytes') {
    const { bytes: index, address, validators } = fetched;
    return { index, address, validators };
  }
  const stays = (await gatheredIds(folder)).length > 0;
  const values = { address: asked, why: fetched.why };
  const message = stays
    ? say('{address}: {why}; what was gathered from it before stays', values)
    : say('{address}: {why}; nothing was gathered from it yet', values);
  warn(`gather-${fetched.kind}`, null, message);
  return null;
}

function announcedBy({ index, address }: SiteCopy, warn: Warn) {
  const read = address.endsWith('/data/index.json')
    ? gatheredIndex(index, address)
    : say('is at an address that does not end in /data/index.json');
  if (typeof read !== 'string') return read;
  warn(
    'gather-refused',
    null,
    say('{address} {fault}; what was gathered from it before stays', { address, fault: read }),
  );
  return null;
}

/** That site's list of cultivars: fetched where it changed, the last good one where the new one is faulty. */
async function cultivarsOf(
  announced: AnnouncedFile | null,
  folder: string,
  allowance: Allowance,
  warn: Warn,
): Promise<readonly Cultivar[] | null> {
  const path = join(folder, 'cultivars.json');
  const kept = await readFile(path).catch(() => null);
  if (announced === null || (kept && sha256(kept) === announced.sha256)) return cultivarsThere(kept);
  const fetched = await fetchVerified(announced, allowance);
  const cultivars = typeof fetched === 'string' ? null : cultivarsThere(fetched.bytes);
  if (typeof fetched !== 'string' && cultivars !== null) {
    await replaceFile(path, fetched.bytes);
    return cultivars;
  }
  const why =
    typeof fetched === 'string'
      ? fetched
      : say('cultivars.json is no list of cultivars by the check of this site');
  warn('gather-refused', null, say('{why}; its cultivars are told apart as before', { why }));
  return cultivarsThere(kept);
}
