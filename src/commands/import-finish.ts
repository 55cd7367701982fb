/** The end of `import`: the files are checked, and written where that was asked for. */
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { checkTrial } from '../check/check-trial.ts';
import { compareProblems } from '../check/print-problem.ts';
import type { Destination, Intake } from '../intake/bring-in.ts';
import { withSources } from '../intake/with-sources.ts';
import { hasError } from '../model/problem.ts';
import { say } from '../model/say.ts';
import { report } from './check.ts';
import type { ImportOptions } from './import-options.ts';
import { contextOf, today } from './load-content.ts';
import { wrongUse } from './usage.ts';

/** Files of the grower's that would be written over; trial.yaml of a trial is added to, and harvest.csv asked about. */
function givingWay({ files }: Intake, folder: string): string[] {
  const isTrial = existsSync(join(folder, 'trial.yaml'));
  return [...files!].flatMap(([path, bytes]) => {
    if (isTrial && (path === 'trial.yaml' || path === 'harvest.csv')) return [];
    if (path.endsWith('.not-used.csv') || !existsSync(join(folder, path))) return [];
    return readFileSync(join(folder, path)).equals(bytes) ? [] : [path];
  });
}

/** Whether something of the grower's would give way. */
export const isReplacing = (intake: Intake, folder: string | null, destination: Destination): boolean =>
  ('target' in destination && destination.target.filled > 0) ||
  (folder !== null && givingWay(intake, folder).length > 0);

/** The list of a spreadsheet's cells that were not used, where all of them are now. */
const isListOfNotUsed = (path: string, files: ReadonlyMap<string, Uint8Array>): boolean =>
  path.startsWith('source/') &&
  path.endsWith('.not-used.csv') &&
  files.has(path.replace(/\.not-used\.csv$/, '')) &&
  !files.has(path);

/** Writes where that was asked for, and says what the check thinks of the folder then. */
export async function finish(
  intake: Intake,
  folder: string | null,
  destination: Destination,
  { write, replace, isAsked = false }: ImportOptions,
): Promise<number> {
  const { files, rows } = intake;
  const before = 'target' in destination ? destination.target.files : new Map<string, Uint8Array>();
  const after = new Map([...before, ...files!]);
  const id = folder === null ? 'own-trial' : basename(folder);
  const context = folder === null ? { cultivars: null, today: today(), prefix: '' } : await contextOf(folder);
  const { problems } = checkTrial(id, after, context);
  process.stderr.write(report(withSources(problems, rows).sort(compareProblems)));
  if (!write && isAsked) return hasError(problems) ? 1 : 0;
  if (!write) {
    process.stdout.write(
      `${say('Nothing is written yet: name a folder and add --write, or correct how a column is read.')}\n`,
    );
    return 0;
  }
  if (folder === null) throw wrongUse(say("--write needs the trial's folder behind the spreadsheet."));
  if (!replace) {
    if ('target' in destination && destination.target.filled > 0)
      throw wrongUse(say('harvest.csv has values already: add --replace where they are to give way.'));
    const [other] = givingWay(intake, folder);
    if (other !== undefined)
      throw wrongUse(
        say('{path} is there already and is another: add --replace where it is to give way.', {
          path: other,
        }),
      );
  }
  for (const path of before.keys())
    if (isListOfNotUsed(path, files!)) await rm(join(folder, path), { force: true });
  for (const [path, bytes] of files!) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), bytes);
  }
  process.stdout.write(`${say('Written: {files}.', { files: [...files!.keys()].join(', ') })}\n`);
  return hasError(problems) ? 1 : 0;
}
