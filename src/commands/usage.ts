/** How the command line is used, and the fault of using it otherwise. */

export const usage = `Usage: npm run -s tankside -- <verb> [folder] [options]

  check [folder]       check a content folder or one trial folder, and print the problems
                       [--json] for programs, [--github] as remarks of a Git host's checks
  findings <folder>    print a trial's findings as JSON
  seasons [folder]     print the seasons compared of a content folder as JSON
  plan [folder]        propose arrangements that can answer a question, and write the trial folder of one;
                       on a terminal it asks for what the options leave out
                       --question <text> --crop <name> --season <name and year> --factor <name=level,level[@container]>
                       --container <id=3x4[@block]> --allot container|plot|position [--check <level>]
                       [--plot 2x2] [--border 1] [--seedlings <number>] [--sizes 31,28.5,...] [--variation <percent>] [--seed <number>]
                       [--record leaves|height|tip_burn|colour|taste|stage|bolted|bolting] [--tasters A,B]
                       [--choose <number>] [--unreplicated] [--title] [--site] [--setting] [--person] [--licence] [--kind]
  import <spreadsheet> [trial folder]
                       bring a grower's own .xlsx, .ods or .csv into a trial's folder, every cell accounted for
                       [--write] [--replace] [--sheet <name>] [--headings 3-4] [--rows 5-51] [--leave-out 12,25] [--turned]
                       [--column D="fresh_weight in oz, plant 2"] [--always container=T1] [--word x=dead]
                       [--decimal ,] [--dates "day first"]
                       into a new folder: --crop <name> --harvested <day> --season <name> --setting <where>
                       --allot container|plot|position [--randomised] [--title] [--question] [--site] [--person] [--licence]
  release <folder>     freeze a trial's files as a new version   --note <what changed> [--level patch|minor|major]
  gather [folder]      fetch the trials of the other sites that site.yaml lists, to compare with one's own
  print <trial>        print a trial's fact sheet to PDF   [--paper letter|a4] [--out <file>]
                       [--of fact-sheet|weighing-sheets|labels] [--grid 3x8] of labels across and down
  sheet <folder>       write a first factsheet.mdx from a finished trial   [--print] to see it only
  build                check, compute and write the site to dist/
  serve                serve dist/ on this machine     [--port <number>] [--host <name>]
  start                build, then serve               [--port <number>] [--host <name>]
  dev                  serve while you edit, rechecking at every change
  test [words]         run every check of Tankside itself, or only the tests whose path holds a word
  bench [words]        measure speed against baselines [--quick]

The content folder is content/, or what TANKSIDE_CONTENT names.
Exit codes: 0 fine, 1 the content has errors, 2 the command was used wrongly.
`;

const CODE = 'TANKSIDE_WRONG_USE';

/** An error that says how the command was used wrongly; the command line answers it with the usage. */
export function wrongUse(message: string): Error {
  return Object.assign(new Error(message), { code: CODE });
}

/** Whether an error is a wrong use, found by us or by node:util parseArgs. */
export function isWrongUse(error: unknown): error is Error {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return false;
  return error.code === CODE || error.code.startsWith('ERR_PARSE_ARGS_');
}
