import { cultivarIdentity } from '../compare/cultivar-identity.ts';
import { seasons } from '../compare/seasons.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { Library } from '../model/library.ts';
import { madeOnce } from './made-once.ts';

/** The comparison of a crop that a page shows first. */
export interface CropComparison {
  /** For an address or an anchor. */
  id: string;
  crop: string;
  /** "per plant set", "per pot". */
  measure: string;
  entry: Seasons;
  name: (cultivar: string) => string;
}

/** Every comparison of the library, all crops and measures. */
export const allSeasons = madeOnce('seasons', (library: Library): Seasons[] =>
  seasons(library.trials, { known: library.cultivars }),
);

/** One comparison for each crop: by the plant where any trial of it can be told so, else by the pot. */
export function cropComparisons(library: Library): CropComparison[] {
  const byCrop = Map.groupBy(allSeasons(library), ({ species, unit, measure }) =>
    measure === 'kg_per_m2' ? null : `${species} ${unit}`,
  );
  byCrop.delete(null);
  return [...byCrop.values()].flatMap((entries) => {
    const most = Math.max(...entries.map(({ trials }) => trials.length));
    const entry =
      entries.find(({ measure, trials }) => measure === 'per_plant_set' && trials.length === most) ??
      entries[0];
    if (entry === undefined) return [];
    const item = library.trials.find(({ trial }) => trial.id === entry.trials[0]?.id);
    const crop = item?.trial.metadata.crop.name ?? entry.species;
    return [
      {
        id: slug(crop),
        crop,
        measure: entry.measure.replaceAll('_', ' '),
        entry,
        name: cultivarIdentity(library.trials, library.cultivars).name,
      },
    ];
  });
}

function slug(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
