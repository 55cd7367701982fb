import type { FolderFiles } from '../read/folder-files.ts';
import { isTrialSheet } from './trial-sheet.ts';
import { compareVersions } from './versions.ts';

/** True for a file of a trial's folder that a version freezes: its data, and its fact sheet in any language. */
export function isRawFile(name: string): boolean {
  return ['trial.yaml', 'layout.csv', 'harvest.csv', 'readings.csv'].includes(name) || isTrialSheet(name);
}

/** The file in which a frozen version keeps the SHA-256 of each of its files. */
export const sumsFile = 'SHA256SUMS';

/** A folder of `versions/`. */
export interface FrozenVersion {
  /** The folder's name, which should be a version. */
  version: string;
  /** Its files by path from it on. */
  files: ReadonlyMap<string, Uint8Array>;
}

/** True for three numbers with points between them. */
export function isVersion(name: string): boolean {
  return /^(0|[1-9]\d*)\.(0|[1-9]\d*)\.(0|[1-9]\d*)$/.test(name);
}

/** The folders of `versions/`, the oldest version first, those that are no version last. */
export function frozenVersions(files: FolderFiles): FrozenVersion[] {
  const found = new Map<string, Map<string, Uint8Array>>();
  for (const [path, bytes] of files) {
    const [, version, name] = /^versions\/([^/]+)\/(.+)$/.exec(path) ?? [];
    if (version === undefined || name === undefined) continue;
    const kept = found.get(version) ?? new Map<string, Uint8Array>();
    found.set(version, kept.set(name, bytes));
  }
  const versions = [...found].map(([version, kept]): FrozenVersion => ({ version, files: kept }));
  return [
    ...versions
      .filter(({ version }) => isVersion(version))
      .sort((a, b) => compareVersions(a.version, b.version)),
    ...versions.filter(({ version }) => !isVersion(version)),
  ];
}

/** The raw files of which one of two folders has another content than the other, or none. */
export function differingFiles(
  a: ReadonlyMap<string, Uint8Array>,
  b: ReadonlyMap<string, Uint8Array>,
): string[] {
  const names = new Set([...a.keys(), ...b.keys()].filter(isRawFile).sort());
  return [...names].filter((name) => !areAlike(a.get(name), b.get(name)));
}

function areAlike(a: Uint8Array | undefined, b: Uint8Array | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return a.length === b.length && a.every((byte, index) => byte === b[index]);
}
