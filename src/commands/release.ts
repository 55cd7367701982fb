/** `release`: freezes a trial's raw files as a version, and writes a new version into trial.yaml. */
import { basename, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { checkFrozen, checkTrial } from '../check/check-trial.ts';
import { differingFiles, type FrozenVersion, frozenVersions } from '../check/frozen-versions.ts';
import { type CellChange, changedCells } from '../compute/versions/changed-cells.ts';
import { type Level, levelOfChange } from '../compute/versions/level-of-change.ts';
import { hasError } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { editRelease } from '../read/edit-release.ts';
import { readTrialFolder } from '../read/folder.ts';
import { decodeUtf8 } from '../read/utf8.ts';
import { readYaml } from '../read/yaml.ts';
import { report } from './check.ts';
import { folderArgument } from './folder-argument.ts';
import { freeze, replaceFile } from './freeze.ts';
import { contextOf, today } from './load-content.ts';
import { raised, releaseWords } from './release-words.ts';
import { wrongUse } from './usage.ts';
import { writeAsSite } from './write-as-site.ts';

type Files = ReadonlyMap<string, Uint8Array>;

const levels: readonly Level[] = ['patch', 'minor', 'major'];

export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { note: { type: 'string' }, level: { type: 'string' } },
  });
  const folder = folderArgument(positionals);
  await writeAsSite(resolve(folder, '..', '..'));
  const note = values.note?.replaceAll(/\s+/g, ' ').trim() ?? '';
  const asked = levels.find((level) => level === values.level) ?? null;
  if (values.level !== undefined && asked === null) {
    throw wrongUse(
      say('--level is patch, minor or major; found "{found}".', { found: values.level.slice(0, 60) }),
    );
  }
  const files = await readTrialFolder(folder);
  const { version, releases } = saidIn(files);
  const frozen = frozenVersions(files).filter((one) => releases.includes(one.version));
  const isListed = releases.includes(version);
  const isFrozen = frozen.some((one) => one.version === version);
  if (note === '') {
    if (!isListed || isFrozen) throw wrongUse(say('--note is missing: say in a sentence what changed.'));
    return await write(folder, files, { version, changes: null, why: say('frozen as it stands') });
  }
  const last = frozen.at(-1) ?? null;
  if (last !== null && isFrozen && differingFiles(files, last.files).length === 0) {
    return refused(
      say('Nothing changed since version {version}, so there is nothing to release.', { version }),
    );
  }
  // A trial without any release gets its first under the version that it gives itself.
  const raise = isListed ? await levelFor(folder, files, last, asked) : null;
  const next = raise === null ? version : raised(version, raise.level);
  if (frozenVersions(files).some((one) => one.version === next)) {
    return refused(
      say('versions/{version} is there already, though trial.yaml has no such release; take it away first.', {
        version: next,
      }),
    );
  }
  const source = decodeUtf8(files.get('trial.yaml') ?? new Uint8Array()).text ?? '';
  const edited = new TextEncoder().encode(editRelease(source, { version: next, date: today(), note }));
  const released = new Map([...files, ['trial.yaml', edited]]);
  return await write(folder, released, {
    version: next,
    changes: raise?.changes ?? null,
    why: raise?.why ?? say('the first release'),
  });
}

/** The version and the releases that trial.yaml gives; what is wrong with it the check says. */
function saidIn(files: Files): { version: string; releases: string[] } {
  const text = decodeUtf8(files.get('trial.yaml') ?? new Uint8Array()).text ?? '';
  const value = readYaml(text).value as Partial<Record<string, unknown>> | null;
  const releases = Array.isArray(value?.['releases']) ? (value['releases'] as unknown[]) : [];
  return {
    version: String(value?.['version'] ?? ''),
    releases: releases.map((one) => String((one as { version?: unknown } | null)?.version ?? '')),
  };
}

interface Raise {
  level: Level;
  /** The level and its reason, for the report. */
  why: string;
  changes: readonly CellChange[] | null;
}

async function levelFor(
  folder: string,
  files: Files,
  last: FrozenVersion | null,
  asked: Level | null,
): Promise<Raise> {
  const context = await contextOf(folder);
  const id = basename(folder);
  const before = last && checkFrozen(id, files, last, context);
  const { trial } = checkTrial(id, files, context);
  const changes = before && trial && changedCells(before, trial);
  if (asked !== null) return { level: asked, why: say('{level}, as asked', { level: asked }), changes };
  if (changes === null || last === null) {
    const why = say('minor, as no version was frozen that it could be compared with; --level sets another');
    return { level: 'minor', why, changes };
  }
  const level = levelOfChange(changes);
  const why = say('{level}, by what changed since {version}', { level, version: last.version });
  return { level, why, changes };
}

/** Checks a release as it will stand, then writes it. */
async function write(
  folder: string,
  files: Files,
  release: { version: string; changes: readonly CellChange[] | null; why: string },
): Promise<number> {
  const { trial, problems } = checkTrial(basename(folder), files, await contextOf(folder));
  if (trial === null || hasError(problems)) {
    return refused(report(problems) + say('Nothing was released: mend the errors above first.'));
  }
  // A plan is released as a promise; a trial that grows has neither a plan to give nor a result.
  if (trial.metadata.status === 'growing') {
    return refused(say('The trial is growing: it is released once it is finished.'));
  }
  const names = await freeze(folder, release.version, files);
  await replaceFile(join(folder, 'trial.yaml'), files.get('trial.yaml')!);
  process.stdout.write(releaseWords(trial.id, release, names));
  return 0;
}

function refused(sentence: string): number {
  process.stderr.write(`${sentence}\n`);
  return 1;
}
