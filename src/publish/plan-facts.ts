import { type PlannedAnalysis, variationOf } from '../compute/planning/planned-analysis.ts';
import type { Cultivar, Library } from '../model/library.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { cropsOf } from './crop-comparisons.ts';

/** What the page for planning knows of the site. */
export interface PlanFacts {
  cultivars: readonly Cultivar[];
  /** The site's crops, each with what a trial of it begins with. */
  crops: readonly {
    name: string;
    crop: TrialMetadata['crop'];
    variables: TrialMetadata['variables'];
    variation: PlannedAnalysis['variation'];
  }[];
  /** For a crop that the site has not grown. */
  otherwise: PlannedAnalysis['variation'];
  /** Of the newest trial; null where there is none. */
  site: TrialMetadata['site'] | null;
  licence: string;
}

/** Gathers what a new trial can take over from those that the site has. */
export function planFacts(library: Library): PlanFacts {
  const [newest] = library.trials;
  return {
    cultivars: library.cultivars,
    crops: cropsOf(library).map(({ name, trials }) => {
      const { crop, variables } = trials[0]!.trial.metadata;
      const { name: cropName, species, taxon } = crop;
      const same = {
        name: cropName,
        ...(species === undefined ? {} : { species }),
        ...(taxon === undefined ? {} : { taxon }),
      };
      return { name, crop: same, variables, variation: variationOf({ crop }, null, library.trials) };
    }),
    otherwise: variationOf({ crop: { name: '' } }, null, []),
    site: newest?.trial.metadata.site ?? null,
    licence: library.site.licence,
  };
}
