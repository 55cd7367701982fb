import { lotUnits } from '../compute/lots/lot-place.ts';
import { say } from '../model/say.ts';

/** One thing that differs in the trial, as typed. */
export interface FactorFields {
  /** Cultivars, or the name of another factor. */
  factor: string;
  /** A level a line, the check first. */
  levels: string;
  /** A unit that it can be allotted to and no other; empty where any of those ticked will do. */
  bound: string;
}

/** What the page for planning and the prompts of the command line ask, as typed. */
export interface PlanFields {
  question: string;
  crop: string;
  season: string;
  year: string;
  site: string;
  setting: string;
  person: string;
  /** At most three; the second and third are left out where they are empty. */
  factors: readonly FactorFields[];
  /** Whether the first level of the first factor is the check. */
  hasCheck: boolean;
  containers: string;
  rows: string;
  columns: string;
  /** A container a line, such as `T1 3x4 north`; instead of the three before, where it is not empty. */
  grids: string;
  kind: string;
  border: string;
  seedlings: string;
  sizes: string;
  allot: readonly string[];
  plotRows: string;
  plotColumns: string;
  /** What is recorded beside the weight. */
  records: readonly string[];
  /** Who tastes, with commas between. */
  tasters: string;
  variation: string;
  unreplicated: boolean;
}

/** Of each factor, the second and third behind a figure: `levels`, `levels2`, `levels3`. */
export const mostFactors = 3;

/** The name of a factor's field. */
export const factorField = (name: keyof FactorFields, index: number): string =>
  index === 0 ? name : `${name}${String(index + 1)}`;

/** What is asked, in the words of the page and of the prompts alike. */
export function planQuestions() {
  return {
    question: say('What do you ask?'),
    crop: say('Crop'),
    season: say('Season'),
    year: say('Year of the harvest'),
    site: say('Place'),
    setting: say('Setting'),
    person: say('Who grows it'),
    factor: say('What differs: cultivars, or another thing such as solution strength'),
    another: say('What else differs, combined with that (empty: nothing)'),
    levels: say('Each on a line of its own; the check first'),
    otherLevels: say('Each on a line of its own'),
    bound: say('It can be allotted to'),
    hasCheck: say('The first is the check, which the others are held against'),
    containers: say('How many containers, alike in size'),
    rows: say('Rows of holes in each'),
    columns: say('Columns of holes in each'),
    grids: say(
      'Or where they differ or stand in blocks, each on a line of its own: name, rows x columns, block, such as T1 3x4 north (empty: all alike)',
    ),
    kind: say('Kind'),
    border: say('Rings along the edge that take no part'),
    seedlings: say('Seedlings there will be (empty: enough)'),
    sizes: say(
      'Sizes of the seedlings in the order of their numbers, with spaces between, to allot them graded (empty: not graded)',
    ),
    allot: say('What treatments can be allotted to'),
    plotRows: say('Rows of a plot'),
    plotColumns: say('Columns of a plot'),
    records: say('What is recorded of each plant beside its weight'),
    tasters: say('Who tastes, by name or letter, with commas between'),
    variation: say(
      'What units vary by, as a coefficient of variation in percent (empty: by this site’s own trials of the crop, or 15)',
    ),
    unreplicated: say(
      'I insist on one container for each treatment, and know that the trial then tests nothing',
    ),
    seed: say('Seed (empty: drawn)'),
  };
}

/** What treatments can be allotted to, with examples. */
export function allotChoices(): { value: string; text: string }[] {
  const words = {
    position: say('each position: what grows in a pot'),
    plot: say('plots of several positions'),
    container: say('whole containers: what is dissolved in the water'),
  };
  return [...lotUnits].reverse().map((value) => ({ value, text: words[value] }));
}

/** What one factor can be allotted to. */
export function boundChoices(): { value: string; text: string }[] {
  const words = {
    container: say('whole containers only'),
    plot: say('plots only'),
    position: say('positions only'),
  };
  return [
    { value: '', text: say('whatever is said below') },
    ...lotUnits.map((value) => ({ value, text: words[value] })),
  ];
}
