/** `seasons`: prints seasons.json of a content folder, and its problems on standard error. */
import { hasError } from '../model/problem.ts';
import { allSeasons } from '../publish/crop-comparisons.ts';
import { report } from './check.ts';
import { folderArgument } from './folder-argument.ts';
import { contentFolder } from './folders.ts';
import { libraryOf } from './library-of.ts';
import { loadContent } from './load-content.ts';

export async function run(args: string[]): Promise<number> {
  const content = await loadContent(folderArgument(args, contentFolder()));
  if (content.problems.length > 0) process.stderr.write(report(content.problems));
  if (hasError(content.problems)) return 1;
  process.stdout.write(`${JSON.stringify(allSeasons(libraryOf(content)), null, 2)}\n`);
  return 0;
}
