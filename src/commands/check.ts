/** `check`: prints every problem of a content folder or of one trial folder. */
import { printCount, printProblem } from '../check/print-problem.ts';
import { hasError, type Problem } from '../model/problem.ts';
import { folderArgument, kindOfFolder } from './folder-argument.ts';
import { contentFolder } from './folders.ts';
import { loadContent, loadTrial } from './load-content.ts';

export async function run(args: string[]): Promise<number> {
  const folder = folderArgument(args, contentFolder());
  const content = kindOfFolder(folder) === 'content';
  const { problems } = content ? await loadContent(folder) : await loadTrial(folder);
  process.stdout.write(report(problems));
  return hasError(problems) ? 1 : 0;
}

/** One line a problem, then a count. */
export function report(problems: readonly Problem[]): string {
  return [...problems.map(printProblem), printCount(problems)].map((line) => `${line}\n`).join('');
}
