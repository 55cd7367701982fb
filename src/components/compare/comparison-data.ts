import { type Offered, offered } from '../../compare/choice/offered.ts';
import { unpackedGroup } from '../../compare/packed-group.ts';
import type { TrialCells } from '../../compare/season-cells.ts';
import type { SeasonGroup } from '../../compare/season-groups.ts';
import type { Comparison } from '../../model/generated/comparison.ts';
import type { Cultivar } from '../../model/library.ts';
import type { PageCrop, PageMeasure } from './page-crops.ts';

/** A trial of the reader's own in one comparison. */
export interface OwnPart {
  part: TrialCells;
  names: ReadonlyMap<string, string>;
  title: string;
}

/** What the page compares by one measure of a crop, the reader's own trials among it. */
export interface PageComparison {
  /** What it is headed by: the crop and the measure. */
  heading: string;
  group: SeasonGroup;
  offered: Offered;
  name: (cultivar: string) => string;
  title: (trial: string) => string;
  /** Ids of the reader's own trials. */
  own: ReadonlySet<string>;
  /** The cultivars of the published trials. */
  known: readonly Cultivar[];
}

export type ComparisonData = ReturnType<typeof comparisonData>;

/** Fetches each comparison once, when it is first asked for, and keeps the reader's own trials in it. */
export function comparisonData(crops: readonly PageCrop[]) {
  const fetched = new Map<string, Promise<Comparison>>();
  const made = new Map<string, PageComparison>();
  const own = new Map<string, Map<string, OwnPart>>();
  const key = (crop: string, measure: string) => `${crop} ${measure}`;

  function offer(crop: string, measure: string): PageMeasure & { heading: string } {
    const { name, measures } = crops.find(({ id }) => id === crop)!;
    const found = measures.find((each) => each.measure === measure)!;
    return { ...found, heading: `${name}, ${found.words}` };
  }

  function published(crop: string, measure: string): Promise<Comparison> {
    const at = key(crop, measure);
    const before = fetched.get(at);
    if (before) return before;
    const { file } = crops.find(({ id }) => id === crop)!.measures.find((each) => each.measure === measure)!;
    const asked = fetch(file).then(async (answer) => {
      if (!answer.ok) throw new Error(`${file} is not there`);
      return (await answer.json()) as Comparison;
    });
    fetched.set(at, asked);
    // What could not be fetched is asked for again the next time.
    asked.catch(() => fetched.delete(at));
    return asked;
  }

  return {
    async load(crop: string, measure: string): Promise<PageComparison> {
      const at = key(crop, measure);
      const packed = await published(crop, measure);
      const comparison = made.get(at) ?? {
        heading: offer(crop, measure).heading,
        ...pageComparison(packed, [...(own.get(at)?.values() ?? [])]),
      };
      made.set(at, comparison);
      return comparison;
    },
    /** Puts a trial of the reader's own into a comparison; null takes it away. */
    setOwn(crop: string, measure: string, trial: string, part: OwnPart | null): void {
      const at = key(crop, measure);
      const parts = own.get(at) ?? new Map<string, OwnPart>();
      if (part === null) parts.delete(trial);
      else parts.set(trial, part);
      own.set(at, parts);
      made.delete(at);
    },
  };
}

function pageComparison(packed: Comparison, own: readonly OwnPart[]): Omit<PageComparison, 'heading'> {
  const group = unpackedGroup(packed);
  const names = new Map(packed.cultivars.map(({ id, name }) => [id, name]));
  const titles = new Map(packed.trials.map(({ id, title }) => [id, title]));
  for (const each of own) {
    group.parts.push(each.part);
    for (const [id, name] of each.names) if (!names.has(id)) names.set(id, name);
    titles.set(each.part.trial.id, each.title);
  }
  return {
    group,
    offered: offered(group),
    name: (cultivar) => names.get(cultivar) ?? cultivar,
    title: (trial) => titles.get(trial) ?? trial,
    own: new Set(own.map(({ part }) => part.trial.id)),
    known: packed.cultivars.map((cultivar) => ({ ...cultivar, species: packed.species })),
  };
}
