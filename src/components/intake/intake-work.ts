/** Reading, applying and checking; loaded only when a spreadsheet was given, since the libraries are large. */
import { checkTrial } from '../../check/check-trial.ts';
import { idOf } from '../../check/folder-of-table.ts';
import { compareProblems } from '../../check/print-problem.ts';
import { bringIn, type Destination, type Given, type Intake } from '../../intake/bring-in.ts';
import type { Mapping } from '../../intake/mapping.ts';
import { openTarget, type Target } from '../../intake/open-target.ts';
import { whyNotRead } from '../../intake/why-not-read.ts';
import { withSources } from '../../intake/with-sources.ts';
import type { Problem } from '../../model/problem.ts';
import { say } from '../../model/say.ts';
import { sha256 } from '../../read/sha256.ts';
import { takeIn } from '../../read/take-in.ts';
import { trialFolders } from '../../read/trial-folders.ts';
import { readWorkbook } from '../../read/workbook.ts';
import { zipOfFolder } from '../../weigh/exported-files.ts';
import type { PageFile } from '../check/page-files.ts';

export { corrected } from '../../intake/corrections.ts';
export { proposals } from '../../intake/proposals.ts';

/** A spreadsheet, or why it cannot be read. */
export async function openSpreadsheet(file: File): Promise<Given | string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const workbook = readWorkbook(bytes);
  if (typeof workbook === 'string') return whyNotRead(workbook);
  return { name: file.name, bytes, sha256: sha256(bytes), workbook };
}

/** The trial's folder among files that were given, or why none can take a harvest. */
export async function openFolder(given: readonly PageFile[]): Promise<Target | string> {
  const { files } = await takeIn(
    given.map(({ path, file }) => ({ path, size: file.size, arrayBuffer: () => file.arrayBuffer() })),
  );
  const [trial, ...more] = trialFolders(files).trials;
  if (trial === undefined) return say('There is no trial’s folder in it.');
  if (more.length > 0) return say('There are several trials in it: give the folder of one.');
  const { target, problems } = openTarget(trial.name ?? 'own-trial', trial.files);
  if (target !== null) return target;
  const first = problems.find(({ severity }) => severity === 'error');
  return first === undefined
    ? say('trial.yaml has to say first what stands where and what is weighed.')
    : `${first.file}: ${first.message}`;
}

/** What comes of it: the intake, and what the check finds in the folder as it would be. */
export interface Outcome {
  intake: Intake;
  /** All of the folder; null where nothing can be written. */
  folder: ReadonlyMap<string, Uint8Array> | null;
  problems: readonly Problem[];
}

/** Brings the spreadsheet in and checks the folder. */
export function outcomeOf(
  given: Given,
  mappings: readonly Mapping[],
  destination: Destination,
  today: string,
): Outcome {
  const intake = bringIn(given, mappings, destination);
  if (intake.files === null) return { intake, folder: null, problems: intake.problems };
  const before = 'target' in destination ? destination.target.files : [];
  const folder = new Map([...before, ...intake.files]);
  const { problems } = checkTrial(idOfTrial(destination), folder, { cultivars: null, today, prefix: '' });
  return { intake, folder, problems: withSources(problems, intake.rows).sort(compareProblems) };
}

/** The folder's name. */
export function idOfTrial(destination: Destination): string {
  if ('target' in destination) return destination.target.id;
  const id = idOf(destination.answers.title).slice(0, 64).replace(/-+$/, '');
  return id.length < 3 ? 'own-trial' : id;
}

/** The folder as a zip. */
export function zipOf(
  destination: Destination,
  folder: ReadonlyMap<string, Uint8Array>,
  today: string,
): Blob {
  const bytes = zipOfFolder(idOfTrial(destination), folder, today);
  return new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/zip' });
}
