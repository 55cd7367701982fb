/** Versions of a trial's raw files, kept as they were under versions/<x.y.z>/ with their checksums. */
import type { Problem } from '../model/problem.ts';
import { sha256 } from '../publish/sha256.ts';

/** The raw files of a trial: what a version is made of. */
export const rawFiles = ['trial.yaml', 'layout.csv', 'harvest.csv', 'readings.csv', 'factsheet.mdx'];

type Files = ReadonlyMap<string, Uint8Array>;

/** A line for each file: its SHA-256 and its name, as the usual programs read it. */
export function sumsOf(files: Files): string {
  const names = [...files.keys()].sort();
  return names.map((name) => `${sha256(files.get(name)!)}  ${name}\n`).join('');
}

/** The files of a frozen version by their name in it; none where the version is not frozen. */
export function frozenFiles(files: Files, version: string): Map<string, Uint8Array> {
  const folder = `versions/${version}/`;
  const inFolder = [...files].filter(([path]) => path.startsWith(folder));
  return new Map(inFolder.map(([path, bytes]) => [path.slice(folder.length), bytes]));
}

/** The versions that are frozen, oldest first. */
export function frozenVersions(files: Files): string[] {
  const found = [...files.keys()].flatMap((path) => /^versions\/(\d+\.\d+\.\d+)\//.exec(path)?.[1] ?? []);
  return [...new Set(found)].sort(compareVersions);
}

/** Below 0 where the first version is the older. */
export function compareVersions(a: string, b: string): number {
  const [left, right] = [a, b].map((version) => version.split('.').map(Number));
  const at = left!.findIndex((part, index) => part !== right![index]);
  return at < 0 ? 0 : left![at]! - right![at]!;
}

/**
 * What is wrong with frozen versions: a file that no longer has the checksum it was frozen with (error), and
 * raw files that are not what the version they claim to be was frozen as (warning).
 */
export function frozenProblems(files: Files, version: string | undefined, prefix: string): Problem[] {
  const problems: Problem[] = [];
  for (const frozen of frozenVersions(files)) {
    const kept = frozenFiles(files, frozen);
    const sums = kept.get('SHA256SUMS');
    if (sums === undefined) continue;
    for (const line of new TextDecoder().decode(sums).trim().split('\n')) {
      const [sum, name = ''] = line.trim().split(/\s+\*?/);
      const bytes = kept.get(name);
      const found = bytes === undefined ? 'missing' : 'altered';
      if (bytes !== undefined && sha256(bytes) === sum) continue;
      problems.push(
        problem('frozen-version', 'error', `${prefix}versions/${frozen}/${name}`, {
          found,
          expected: 'the file as it was released',
          message: `${name} of version ${frozen} is ${found}, and a released version stays as it was; put it back, and release the change as a new version`,
        }),
      );
    }
    if (frozen === version) problems.push(...unreleased(files, kept, frozen, prefix));
  }
  return problems;
}

function unreleased(files: Files, kept: Files, version: string, prefix: string): Problem[] {
  const changed = changedFiles(kept, files);
  if (changed.length === 0) return [];
  const message = `${changed.join(', ')} changed since version ${version} was released; run release with a note to make it a new version`;
  return [
    problem('unreleased-changes', 'warning', `${prefix}trial.yaml`, {
      found: changed.join(', '),
      expected: 'a new release',
      message,
    }),
  ];
}

/** Names of the raw files that differ between two states, one of them missing included. */
export function changedFiles(before: Files, after: Files): string[] {
  const sum = (files: Files, name: string) => {
    const bytes = files.get(name);
    return bytes === undefined ? null : sha256(bytes);
  };
  return rawFiles.filter((name) => sum(before, name) !== sum(after, name));
}

function problem(
  rule: string,
  severity: Problem['severity'],
  file: string,
  said: Pick<Problem, 'found' | 'expected' | 'message'>,
): Problem {
  return { rule, severity, file, line: null, column: null, hint: null, where: null, ...said };
}
