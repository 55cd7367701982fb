/** `release`: freezes a trial's raw files as a new version and writes the release into trial.yaml. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { hasError } from '../model/problem.ts';
import { readTrialFolder } from '../read/folder.ts';
import { withRelease } from '../read/release-text.ts';
import { decodeUtf8 } from '../read/utf8.ts';
import { readYaml } from '../read/yaml.ts';
import { report } from './check.ts';
import { folderArgument } from './folder-argument.ts';
import { changedFiles, frozenFiles, frozenVersions, rawFiles, sumsOf } from './frozen-versions.ts';
import { loadTrial, today } from './load-content.ts';
import { wrongUse } from './usage.ts';

type Level = 'major' | 'minor' | 'patch';
const levels: readonly Level[] = ['patch', 'minor', 'major'];

/** Keys of trial.yaml that say what the numbers mean: a change of them is a change of meaning. */
const meaning = ['crop', 'factors', 'design', 'containers', 'variables', 'harvest'];

export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { note: { type: 'string' }, level: { type: 'string' } },
  });
  const folder = folderArgument(positionals);
  const note = values.note?.trim() ?? '';
  if (note === '') throw wrongUse('--note is missing: say in a sentence what changed.');
  const asked = levels.find((level) => level === values.level);
  if (values.level !== undefined && asked === undefined) {
    throw wrongUse(`--level is patch, minor or major; found "${values.level.slice(0, 60)}".`);
  }
  const { trial, problems } = await loadTrial(folder);
  if (trial === null || hasError(problems)) {
    process.stderr.write(`${report(problems)}Nothing was released: mend the errors above first.\n`);
    return 1;
  }
  const files = await readTrialFolder(folder);
  const { version } = trial.metadata;
  const last = frozenVersions(files).at(-1);
  if (frozenFiles(files, version).size === 0) {
    await freeze(folder, version, files);
    return said(`Version ${version} is now frozen as it stands, in versions/${version}/.`);
  }
  const before = frozenFiles(files, last!);
  const changed = changedFiles(before, files);
  if (changed.length === 0) {
    return said(`Nothing changed since version ${last!}, so there is nothing to release.`, 1);
  }
  const next = raised(version, asked ?? levelOf(before, files, changed));
  const text = withRelease(textOf(files.get('trial.yaml')!), { version: next, date: today(), note });
  if (text === null) {
    return said(
      'The release could not be written into trial.yaml: it needs a version and a list of releases, one a line.',
      1,
    );
  }
  const metadata = new TextEncoder().encode(text);
  await writeFile(join(folder, 'trial.yaml'), metadata);
  await freeze(folder, next, new Map([...files, ['trial.yaml', metadata]]));
  return said(
    `Version ${next} is released (${changed.join(', ')} changed), and frozen in versions/${next}/.`,
  );
}

function said(sentence: string, code = 0): number {
  (code === 0 ? process.stdout : process.stderr).write(`${sentence}\n`);
  return code;
}

async function freeze(
  folder: string,
  version: string,
  files: ReadonlyMap<string, Uint8Array>,
): Promise<void> {
  const target = join(folder, 'versions', version);
  const raw = new Map(
    rawFiles.flatMap((name) => (files.has(name) ? [[name, files.get(name)!] as const] : [])),
  );
  await mkdir(target, { recursive: true });
  for (const [name, bytes] of raw) await writeFile(join(target, name), bytes);
  await writeFile(join(target, 'SHA256SUMS'), sumsOf(raw));
}

/** Major where what the numbers mean changed, minor where numbers did, else patch. */
function levelOf(
  before: ReadonlyMap<string, Uint8Array>,
  after: ReadonlyMap<string, Uint8Array>,
  changed: readonly string[],
): Level {
  const [old, now] = [before, after].map((files) => {
    const bytes = files.get('trial.yaml');
    return (bytes === undefined ? null : readYaml(textOf(bytes)).value) as Record<string, unknown> | null;
  });
  const weighed = ({ containers }: Record<string, unknown>): string =>
    JSON.stringify((containers as { weighed_total?: unknown }[]).map((each) => each.weighed_total));
  const told = (metadata: Record<string, unknown>, key: string): string =>
    key === 'containers'
      ? JSON.stringify((metadata[key] as object[]).map((each) => ({ ...each, weighed_total: null })))
      : JSON.stringify(metadata[key]);
  if (old && now && meaning.some((key) => told(old, key) !== told(now, key))) return 'major';
  const numbers = ['layout.csv', 'harvest.csv', 'readings.csv'].some((name) => changed.includes(name));
  return numbers || (old && now && weighed(old) !== weighed(now)) ? 'minor' : 'patch';
}

function textOf(bytes: Uint8Array): string {
  return decodeUtf8(bytes).text ?? '';
}

function raised(version: string, level: Level): string {
  const [major = 0, minor = 0, patch = 0] = version.split('.').map(Number);
  if (level === 'major') return `${major + 1}.0.0`;
  return level === 'minor' ? `${major}.${minor + 1}.0` : `${major}.${minor}.${patch + 1}`;
}
