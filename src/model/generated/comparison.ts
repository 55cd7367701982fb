/* Generated from schemas/comparison.schema.json by `npm run generate`. */

/**
 * What the trials of one crop bring to a comparison by one measure: all that the page which compares cultivars computes from, to full precision.
 */
export interface Comparison {
  /**
   * The crop's scientific name, or its common name where none is given.
   */
  species: string;
  /**
   * What is compared: g of fresh weight a pot or a plant set, or kg for each square metre of cover.
   */
  measure: 'per_pot' | 'per_plant_set' | 'kg_per_m2';
  /**
   * The unit of the means: g for weights.
   */
  unit: string;
  /**
   * The cultivars of its trials.
   *
   * Items: One cultivar.
   */
  cultivars: {
    /**
     * An id of cultivars.yaml, or its name.
     */
    id: string;
    /**
     * As a reader sees it.
     */
    name: string;
    /**
     * Other names of it; absent where there are none.
     *
     * Items: One name.
     */
    synonyms?: string[];
  }[];
  /**
   * The trials that have a value, oldest first.
   *
   * Items: One trial.
   */
  trials: {
    /**
     * The trial's title.
     */
    title: string;
    /**
     * The trial.
     */
    id: string;
    /**
     * Its season.
     */
    season: string;
    /**
     * What stood over the containers.
     */
    setting: string;
    /**
     * Days from transplanting, or from sowing, to the last cut.
     */
    days: number | null;
    /**
     * Plants in a pot.
     */
    plants_per_pot: string;
    /**
     * Other factors that its means are averaged over; empty where there is none.
     */
    averaged_over: string;
    /**
     * Cuts summed.
     */
    cuts: number;
    /**
     * What was weighed, by the trial's own name for it.
     */
    variable: string;
    /**
     * Positions for each square metre of cover; null where a cover is not given.
     */
    pots_per_m2: number | null;
    /**
     * Mean of the readings of conductivity, mS/cm at 25 C; null where none was read.
     */
    ec: number | null;
    /**
     * Whether its cultivars were replicated, so that the trial had an error of its own.
     */
    replicated: boolean;
    /**
     * Where it was gathered from; absent for the site's own trials. The id is then that site's folder, a slash and the trial's id there.
     */
    origin?: {
      /**
       * What its site is called here.
       */
      title: string;
      /**
       * Where its site stands.
       */
      address: string;
      /**
       * The trial's page there.
       */
      page: string;
      /**
       * Its dataset's DOI as an address where it has one, else its data page there.
       */
      identifier: string;
      /**
       * The day on which this version of it was fetched.
       */
      gathered: string;
    };
    /**
     * Its check cultivar, null where it names none.
     */
    check: string | null;
    /**
     * The trial's own error of one cultivar mean; null where its cultivars were not replicated.
     */
    error: {
      /**
       * Variance of a mean without what the trial's blocks share.
       */
      variance: number;
      /**
       * Its degrees of freedom.
       */
      df: number;
    } | null;
    /**
     * Its means as lists that run side by side, one place for each of its cultivars.
     */
    cells: {
      /**
       * The cultivar: its place in the list of cultivars, counted from 0.
       *
       * Items: One place.
       */
      cultivars: number[];
      /**
       * Its mean there: adjusted where the trial was tested, plain elsewhere.
       *
       * Items: One mean.
       */
      means: number[];
      /**
       * Standard errors in the trial, null where the trial had no error.
       *
       * Items: One standard error.
       */
      standard_errors: (number | null)[];
      /**
       * Replicates, or values where the trial was not tested.
       *
       * Items: One count.
       */
      n: number[];
    };
  }[];
}
