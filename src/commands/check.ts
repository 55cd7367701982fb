/** `check`: prints every problem of a content folder or of one trial folder. */
import { parseArgs, styleText } from 'node:util';
import { printCount, printJson, printProblem, printReport } from '../check/print-problem.ts';
import { hasError, type Problem } from '../model/problem.ts';
import { annotation } from './annotation.ts';
import { folderArgument, kindOfFolder } from './folder-argument.ts';
import { contentFolder } from './folders.ts';
import { loadContent, loadTrial } from './load-content.ts';
import { wrongUse } from './usage.ts';

export { printReport as report };

export async function run(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, github: { type: 'boolean', default: false } },
  });
  if (values.json && values.github) throw wrongUse('--json and --github cannot both be had.');
  const folder = folderArgument(positionals, contentFolder());
  const content = kindOfFolder(folder) === 'content';
  const { problems } = content ? await loadContent(folder) : await loadTrial(folder);
  process.stdout.write(written(problems, folder, values));
  return hasError(problems) ? 1 : 0;
}

function written(
  problems: readonly Problem[],
  folder: string,
  { json, github }: { json: boolean; github: boolean },
): string {
  if (json) return printJson(problems);
  if (github) return problems.map((problem) => `${annotation(problem, folder)}\n`).join('');
  return process.stdout.isTTY ? inColour(problems) : printReport(problems);
}

const colours = { error: 'red', warning: 'yellow', note: 'cyan' } as const;

/** The same lines with the severity in colour, for a terminal; NO_COLOR is honoured by styleText. */
function inColour(problems: readonly Problem[]): string {
  const lines = problems.map((problem) =>
    printProblem(problem).replace(`  ${problem.severity}  `, (word) =>
      styleText([colours[problem.severity], 'bold'], word, { stream: process.stdout }),
    ),
  );
  return [...lines, printCount(problems)].map((line) => `${line}\n`).join('');
}
