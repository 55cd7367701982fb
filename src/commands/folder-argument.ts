import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { wrongUse } from './usage.ts';

/** What a folder on the command line is. */
export type FolderKind = 'content' | 'trial';

/** The one folder that a verb takes, or `otherwise` where none is given; a wrong use where it is no folder. */
export function folderArgument(args: string[], otherwise?: string): string {
  const { positionals } = parseArgs({ args, allowPositionals: true, options: {} });
  if (positionals.length > 1) throw wrongUse(`One folder is expected; found ${positionals.length}.`);
  const folder = positionals[0] ?? otherwise;
  if (folder === undefined) throw wrongUse('A folder is missing.');
  const path = resolve(folder);
  if (!existsSync(path)) throw wrongUse(`There is no folder "${folder.slice(0, 200)}".`);
  if (!statSync(path).isDirectory())
    throw wrongUse(`"${folder.slice(0, 200)}" is a file; a folder is expected.`);
  return path;
}

/**
 * A folder that holds trials/ or site.yaml is a content folder; any other is taken for a trial folder, so
 * that a trial without its trial.yaml is told so.
 */
export function kindOfFolder(folder: string): FolderKind {
  if (existsSync(join(folder, 'trial.yaml'))) return 'trial';
  return ['trials', 'site.yaml', 'cultivars.yaml'].some((name) => existsSync(join(folder, name)))
    ? 'content'
    : 'trial';
}
