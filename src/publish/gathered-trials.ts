import type { Origin } from '../model/gathered.ts';
import type { Library } from '../model/library.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { creditedPeople } from './credited-people.ts';
import { licence, type Licence } from './licence.ts';

/** What is said of a trial of another site: whose it is, and where it is published. */
export interface GatheredTrial {
  /** As the comparisons name it. */
  key: string;
  /** On its own site. */
  id: string;
  title: string;
  version: string;
  creators: readonly string[];
  licence: Licence;
  season: TrialMetadata['season'];
  crop: TrialMetadata['crop'];
  origin: Origin;
}

/** The trials of other sites in the order of their sites and ids. */
export function gatheredTrials({ gathered = [] }: Pick<Library, 'gathered'>): GatheredTrial[] {
  return gathered
    .flatMap(({ trial: { id, metadata, origin } }): GatheredTrial[] => {
      if (origin === undefined) return [];
      const { title, version, season, crop } = metadata;
      const creators = creditedPeople(metadata.people).creators.map(({ name }) => name.full);
      const shared = { title, version, season, crop, creators };
      return [{ key: id, id: origin.id, ...shared, licence: licence(metadata.licence), origin }];
    })
    .sort((a, b) => (a.key < b.key ? -1 : 1));
}
