/** Where things are. */
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The program's own folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the built site stands: dist/, or what TANKSIDE_OUT names. */
export function outputFolder(): string {
  return resolve(process.env['TANKSIDE_OUT'] || resolve(root, 'dist'));
}

/** The folder of the trials to publish: content/, or what TANKSIDE_CONTENT names. */
export function contentFolder(): string {
  return resolve(process.env['TANKSIDE_CONTENT'] || resolve(root, 'content'));
}
