import type { Comparison } from '../model/generated/comparison.ts';
import type { TrialCells } from './season-cells.ts';
import type { SeasonGroup } from './season-groups.ts';

/** What a packed comparison is called by beside its numbers. */
export interface GroupNames {
  name: (cultivar: string) => string;
  synonyms: (cultivar: string) => readonly string[];
  title: (trial: string) => string;
}

/**
 * A crop and measure in the form in which it is published for the page that compares: each cultivar is named
 * once, and a trial's means are lists. What the rest gives is left out: percents of the check, and counts.
 */
export function packedGroup(group: SeasonGroup, { name, synonyms, title }: GroupNames): Comparison {
  const { species, measure, unit, parts } = group;
  const cultivars = [...new Set(parts.flatMap(({ cells }) => cells.map(({ cultivar }) => cultivar)))];
  const places = new Map(cultivars.map((cultivar, place) => [cultivar, place]));
  return {
    species,
    measure,
    unit,
    cultivars: cultivars.map((id) => {
      const others = synonyms(id);
      return { id, name: name(id), ...(others.length === 0 ? {} : { synonyms: [...others] }) };
    }),
    trials: parts.map(({ trial, cells, check, error }) => ({
      title: title(trial.id),
      ...without(trial, 'cultivars'),
      check,
      error,
      cells: {
        cultivars: cells.map(({ cultivar }) => places.get(cultivar)!),
        means: cells.map(({ mean }) => mean),
        standard_errors: cells.map(({ se }) => se),
        n: cells.map(({ n }) => n),
      },
    })),
  };
}

/** The same group again, number for number. */
export function unpackedGroup({ species, measure, unit, cultivars, trials }: Comparison): SeasonGroup {
  return {
    species,
    measure,
    unit,
    parts: trials.map(({ check, error, cells: lists, ...titled }): TrialCells => {
      const trial = without(titled, 'title');
      const ids = lists.cultivars.map((place) => cultivars[place]!.id);
      const ofCheck = check === null ? null : (lists.means[ids.indexOf(check)] ?? null);
      return {
        trial: { ...trial, cultivars: ids.length },
        cells: ids.map((cultivar, place) => ({
          cultivar,
          trial: trial.id,
          mean: lists.means[place]!,
          se: lists.standard_errors[place]!,
          n: lists.n[place]!,
          percent_of_check: ofCheck === null || ofCheck <= 0 ? null : (100 * lists.means[place]!) / ofCheck,
        })),
        check,
        error,
      };
    }),
  };
}

/** The same but for one key. */
function without<Whole extends object, Key extends keyof Whole>(whole: Whole, key: Key): Omit<Whole, Key> {
  return Object.fromEntries(Object.entries(whole).filter(([each]) => each !== key)) as Omit<Whole, Key>;
}
