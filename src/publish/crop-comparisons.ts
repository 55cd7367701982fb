import { cultivarIdentity } from '../compare/cultivar-identity.ts';
import { speciesOf } from '../compare/season-cells.ts';
import { seasons } from '../compare/seasons.ts';
import { triedCultivars } from '../compare/tried-cultivars.ts';
import { addressPart } from '../compute/format/address-part.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import type { Library, TrialWithFindings } from '../model/library.ts';
import { everyTrial } from './every-trial.ts';
import { madeOnce } from './made-once.ts';

/** A comparison of a crop by one measure. */
export interface CropComparison {
  /** For an address or an anchor: the crop's. */
  id: string;
  crop: string;
  /** "per plant set", "per pot", "kg per m2". */
  measure: string;
  entry: Seasons;
  name: (cultivar: string) => string;
}

/** A crop with its trials and its comparisons. */
export interface Crop {
  /** The address of its page under crops/. */
  id: string;
  /** Its common name. */
  name: string;
  /** As the comparisons name it: the scientific name, or the common one where none is given. */
  species: string;
  /** Newest first. */
  trials: TrialWithFindings[];
  /** That which a page shows first at the head; empty where no finished trial names its cultivars. */
  comparisons: CropComparison[];
}

/** Every comparison of the library, all crops and measures. */
export const allSeasons = madeOnce('seasons', (library: Library): Seasons[] =>
  seasons(everyTrial(library), { known: library.cultivars }),
);

/** Every cultivar of the site with its trials and its page's address. */
export const cultivarsOf = madeOnce('cultivars', (library: Library) =>
  triedCultivars(everyTrial(library), library.cultivars),
);

/** Which cultivar each level of each trial is. */
export const identityOf = madeOnce('cultivar-identity', (library: Library) =>
  cultivarIdentity(everyTrial(library), library.cultivars),
);

/** Every crop of the library in the order of its common names. */
export const cropsOf = madeOnce('crops', (library: Library): Crop[] => {
  const { name } = identityOf(library);
  const taken = new Map<string, number>();
  return [...Map.groupBy(everyTrial(library), ({ trial }) => speciesOf(trial))]
    .map(([species, trials]) => ({ species, trials, crop: ownFirst(trials).trial.metadata.crop.name }))
    .sort((a, b) => (`${a.crop} ${a.species}` < `${b.crop} ${b.species}` ? -1 : 1))
    .map(({ species, trials, crop }): Crop => {
      const own = addressPart(crop) || 'crop';
      const count = (taken.get(own) ?? 0) + 1;
      taken.set(own, count);
      const id = count === 1 ? own : `${own}-${String(count)}`;
      const entries = allSeasons(library).filter((entry) => entry.species === species);
      const comparisons = firstOnTop(entries).map((entry) => ({
        id,
        crop,
        measure: entry.measure.replaceAll('_', ' '),
        entry,
        name,
      }));
      return { id, name: crop, species, trials, comparisons };
    });
});

/** The newest of the site's own trials, whose name for the crop stands; else the newest of all. */
function ownFirst(trials: readonly TrialWithFindings[]): TrialWithFindings {
  return trials.find(({ trial }) => trial.origin === undefined) ?? trials[0]!;
}

/** The comparison of each crop that a page shows first. */
export function cropComparisons(library: Library): CropComparison[] {
  return cropsOf(library).flatMap(({ comparisons }) => comparisons.slice(0, 1));
}

/** Most trials first; among equals by the plant, then by the pot, then by area. */
function firstOnTop(entries: readonly Seasons[]): Seasons[] {
  const order: readonly Seasons['measure'][] = ['per_plant_set', 'per_pot', 'kg_per_m2'];
  return [...entries].sort(
    (a, b) => b.trials.length - a.trials.length || order.indexOf(a.measure) - order.indexOf(b.measure),
  );
}
