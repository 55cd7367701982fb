/** Where things are. */
import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { wrongUse } from './usage.ts';

/** The program's own folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the built site stands: dist/, or what TANKSIDE_OUT names. */
export function outputFolder(): string {
  return resolve(process.env['TANKSIDE_OUT'] || resolve(root, 'dist'));
}

/** The content folder, which is there; a wrong use where TANKSIDE_CONTENT names none. */
export function presentContentFolder(): string {
  const folder = contentFolder();
  const found = statSync(folder, { throwIfNoEntry: false });
  if (found === undefined) throw wrongUse(`TANKSIDE_CONTENT names "${folder}", and there is no such folder.`);
  if (!found.isDirectory())
    throw wrongUse(`TANKSIDE_CONTENT names "${folder}", which is a file; a folder is expected.`);
  if (existsSync(join(folder, 'trial.yaml')))
    throw wrongUse(
      `TANKSIDE_CONTENT names "${folder}", which is one trial; name the folder that holds site.yaml and trials/.`,
    );
  return folder;
}

/** The folder of the trials to publish: content/, or what TANKSIDE_CONTENT names. */
export function contentFolder(): string {
  return resolve(process.env['TANKSIDE_CONTENT'] || resolve(root, 'content'));
}
