/** Opens trials from files that were given; loaded only when there are some. */
import { takeIn } from '../../read/take-in.ts';
import { trialFolders } from '../../read/trial-folders.ts';
import { openTrial, type OpenedTrial } from '../../weigh/open-trial.ts';
import type { PageFile } from '../check/page-files.ts';

/** A trial's folder that was given: opened, or what keeps it from being so. */
export interface GivenFolder {
  name: string;
  opened: OpenedTrial | null;
  faults: readonly string[];
}

/** Opens every trial among the files. */
export async function openFolders(files: readonly PageFile[]): Promise<GivenFolder[]> {
  const given = files.map(({ path, file }) => ({
    path,
    size: file.size,
    arrayBuffer: () => file.arrayBuffer(),
  }));
  const { files: taken, refused } = await takeIn(given);
  const broken = refused.map(({ name, fault }) => ({ name, opened: null, faults: [fault] }));
  if (taken.size === 0) return broken;
  const opened = trialFolders(taken).trials.map((trial): GivenFolder => {
    const { opened: found, problems } = openTrial(trial);
    const faults = found === null ? problems.map(({ file, message }) => `${file}: ${message}`) : [];
    return { name: trial.name ?? '', opened: found, faults };
  });
  return [...broken, ...opened];
}
