/** What `import` is told on the command line. */
import { parseArgs } from 'node:util';
import { isDate } from '../check/date.ts';
import type { Corrections } from '../intake/corrections.ts';
import type { NewTrialAnswers } from '../intake/new-trial.ts';
import { say } from '../model/say.ts';
import { settings } from '../plan/plan-request.ts';
import { wrongUse } from './usage.ts';

const options = {
  sheet: { type: 'string', multiple: true },
  turned: { type: 'boolean' },
  headings: { type: 'string' },
  rows: { type: 'string' },
  'leave-out': { type: 'string', multiple: true },
  column: { type: 'string', multiple: true },
  always: { type: 'string', multiple: true },
  word: { type: 'string', multiple: true },
  decimal: { type: 'string' },
  dates: { type: 'string' },
  write: { type: 'boolean', default: false },
  replace: { type: 'boolean', default: false },
  title: { type: 'string' },
  question: { type: 'string' },
  crop: { type: 'string' },
  harvested: { type: 'string' },
  season: { type: 'string' },
  setting: { type: 'string' },
  site: { type: 'string' },
  person: { type: 'string' },
  licence: { type: 'string' },
  allot: { type: 'string' },
  randomised: { type: 'boolean', default: false },
} as const;

export interface ImportOptions {
  /** The spreadsheet and the trial's folder, as given; the folder null where none is. */
  file: string;
  folder: string | null;
  /** The sheets to be used; empty for all that have a table. */
  sheets: readonly string[];
  corrections: Corrections;
  isCorrected: boolean;
  write: boolean;
  replace: boolean;
  /** True where the grower is asked about what is shown, and told nothing of options. */
  isAsked?: boolean;
  /** What is said of a new trial. */
  answers(): NewTrialAnswers;
}

/** Reads the options; a wrong use names the option and shows how it is written. */
export function importOptions(args: string[]): ImportOptions {
  const { values, positionals } = parseArgs({ args, allowPositionals: true, options });
  const [file, folder, ...more] = positionals;
  if (file === undefined) throw wrongUse(say('A spreadsheet is missing: name an .xlsx, .ods or .csv file.'));
  if (more.length > 0)
    throw wrongUse(
      say('A spreadsheet and one folder are expected; found {count}.', { count: positionals.length }),
    );
  const corrections: Corrections = {
    turned: values.turned,
    headings: values.headings,
    rows: values.rows,
    leaveOut: values['leave-out'],
    columns: values.column,
    always: values.always,
    words: values.word,
    decimal: values.decimal,
    dates: values.dates,
  };
  return {
    file,
    folder: folder ?? null,
    sheets: values.sheet ?? [],
    corrections,
    isCorrected: Object.values(corrections).some((value) => value !== undefined),
    write: values.write,
    replace: values.replace,
    answers: () => answersOf(values),
  };
}

type Values = ReturnType<typeof parseArgs<{ options: typeof options; allowPositionals: true }>>['values'];

function answersOf(values: Values): NewTrialAnswers {
  const needed = (name: 'crop' | 'harvested' | 'season' | 'setting' | 'allot', example: string): string => {
    const value = values[name];
    if (value === undefined)
      throw wrongUse(
        say('The folder is new: --{option} is missing, such as --{option} "{example}".', {
          option: name,
          example,
        }),
      );
    return value;
  };
  const crop = needed('crop', say('Lettuce'));
  const harvested = needed('harvested', '2025-10-20');
  if (!isDate(harvested))
    throw wrongUse(
      say('--harvested is a day such as 2025-10-20; found "{found}".', { found: harvested.slice(0, 60) }),
    );
  const season = needed('season', say('autumn'));
  return {
    title: values.title ?? `${crop}, ${season} ${harvested.slice(0, 4)}`,
    question: values.question ?? say('How much does each cultivar of {crop} yield?', { crop }),
    crop: { name: crop },
    harvested,
    season,
    setting: oneOf('setting', needed('setting', 'greenhouse'), settings),
    site: values.site ?? say('My garden'),
    person: values.person ?? say('The grower'),
    licence: values.licence ?? 'CC-BY-4.0',
    allotted: oneOf('allot', needed('allot', 'container'), ['container', 'plot', 'position'] as const),
    randomised: values.randomised,
  };
}

function oneOf<T extends string>(name: string, value: string, choices: readonly T[]): T {
  const found = choices.find((choice) => choice === value);
  if (found === undefined)
    throw wrongUse(
      say('--{option} is one of {choices}; found "{found}".', {
        option: name,
        choices: choices.join(', '),
        found: value.slice(0, 60),
      }),
    );
  return found;
}
