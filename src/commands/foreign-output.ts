/** A build takes the place of the folder that it is written to, so that folder must be one that may go. */
import { existsSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { say } from '../model/say.ts';

/** Files that every site has that was built here. */
const ofSite = ['index.html', '404.html', join('data', 'index.json')];

/**
 * Why a folder must not be replaced by the built site, in a sentence; null where it is not there yet, is empty, or is
 * a site built before.
 *
 * @param kept folders that a build reads from, and that must not lie inside
 */
export function foreignOutput(folder: string, kept: readonly string[]): string | null {
  if (!existsSync(folder)) return null;
  if (!statSync(folder).isDirectory())
    return say('"{folder}" is a file; name a folder of its own for the site in TANKSIDE_OUT.', { folder });
  const real = realpathSync(folder);
  for (const path of kept) {
    const one = existsSync(path) ? realpathSync(path) : path;
    if (one === real || one.startsWith(real.endsWith(sep) ? real : real + sep))
      return say(
        '"{folder}" holds what the site is made of, and a build would take its place; name a folder of its own in TANKSIDE_OUT.',
        { folder },
      );
  }
  if (readdirSync(folder).length === 0 || ofSite.every((name) => existsSync(join(folder, name)))) return null;
  return say(
    '"{folder}" holds files that are no site built before, and a build would take their place; name a new or empty folder in TANKSIDE_OUT.',
    { folder },
  );
}
