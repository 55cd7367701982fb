import type { Trial } from '../model/trial.ts';
import { archive } from './archive.ts';
import { describedAs, textFile, type PublishedFile } from './published-file.ts';
import { withoutEmails } from './without-emails.ts';
import { sha256Sums } from './sha256-sums.ts';

const pattern = /^versions\/(\d+\.\d+\.\d+)\/(.+)$/;

const byVersion = (a: string, b: string): number => {
  const [left, right] = [a, b].map((version) => version.split('.').map(Number));
  for (let at = 0; at < 3; at += 1) {
    const difference = (left?.[at] ?? 0) - (right?.[at] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};

function kept(trial: Trial): Map<string, PublishedFile[]> {
  const found = new Map<string, PublishedFile[]>();
  for (const [path, bytes] of trial.files) {
    const [, version = '', name = ''] = pattern.exec(path) ?? [];
    // The sums of what was frozen are reckoned anew, over the same files.
    if (version === '' || version === trial.metadata.version || name === 'SHA256SUMS') continue;
    const files = found.get(version) ?? [];
    files.push({
      name,
      bytes: name === 'trial.yaml' ? published(trial, bytes) : bytes,
      mediaType: 'application/octet-stream',
      description: '',
    });
    found.set(version, files);
  }
  return found;
}

/** A frozen trial.yaml without any e-mail but those that are public now: who took theirs back is heeded. */
function published({ metadata }: Trial, bytes: Uint8Array): Uint8Array {
  return new TextEncoder().encode(withoutEmails(new TextDecoder().decode(bytes), metadata.people));
}

/**
 * The archives of earlier versions, so that their addresses hold for ever. A version's folder that keeps
 * the archive as it was published (`<id>-<x.y.z>.zip`) gives that, byte for byte; otherwise the archive is
 * made of the trial folder as it was then, e-mails that are not public withheld, with its checksums.
 */
export function earlierVersions(trial: Trial): PublishedFile[] {
  const versions = kept(trial);
  return [...versions.keys()].sort(byVersion).flatMap((version) => {
    const files = versions.get(version) ?? [];
    const name = `${trial.id}-${version}.zip`;
    const release = trial.metadata.releases?.find((each) => each.version === version);
    const described =
      release === undefined
        ? describedAs('Version {version}, as it was then.', { version })
        : describedAs('Version {version} of {date}, as it was then.', { version, date: release.date });
    const asPublished = files.find((file) => file.name === name);
    const inOrder = [...files].sort((a, b) => (a.name < b.name ? -1 : 1));
    const sums = textFile('SHA256SUMS', 'text/plain', '', sha256Sums(inOrder));
    const bytes =
      asPublished?.bytes ??
      archive(`${trial.id}-${version}`, release?.date ?? '1980-01-01', [...inOrder, sums]);
    return [{ name, bytes, mediaType: 'application/zip', ...described }];
  });
}
