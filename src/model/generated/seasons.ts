/* Generated from schemas/seasons.schema.json by `npm run generate`. */

/**
 * Cultivars compared across seasons: one entry for each crop and measure. The trial is the replicate: cultivar + trial, additive, by least squares on the trials' own treatment means.
 */
export type SeasonsCompared = Seasons[];

/**
 * One crop and measure.
 */
export interface Seasons {
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
   * The trials that have a value, oldest first.
   *
   * Items: One trial.
   */
  trials: {
    /**
     * The trial.
     */
    id: string;
    /**
     * Its season.
     */
    season: string;
    /**
     * How many cultivars it has.
     */
    cultivars: number;
    /**
     * Whether its cultivars were replicated, so that the trial had an error of its own.
     */
    replicated: boolean;
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
     * Its mean adjusted for the cultivars that it grew: over all of its linked set.
     */
    adjusted_mean: number | null;
  }[];
  /**
   * In what the trials are not alike, a sentence each; empty where they are alike.
   *
   * Items: One sentence.
   */
  trials_differ: string[];
  /**
   * The trials' own means.
   *
   * Items: One cultivar in one trial.
   */
  cells: {
    /**
     * The cultivar: an id of cultivars.yaml, or its name.
     */
    cultivar: string;
    /**
     * The trial.
     */
    trial: string;
    /**
     * Its mean there: adjusted where the trial was tested, plain elsewhere.
     */
    mean: number;
    /**
     * Its standard error in the trial, null where the trial had no error.
     */
    se: number | null;
    /**
     * Replicates, or values where the trial was not tested.
     */
    n: number;
    /**
     * In percent of the trial's check cultivar.
     */
    percent_of_check: number | null;
  }[];
  /**
   * Cultivars that a chain of shared trials connects; others are never compared.
   */
  linked_sets: string[][];
  /**
   * The analysis of variance of cultivar + trial.
   *
   * Items: One row.
   */
  anova: {
    /**
     * The term: each after the other; the residual is cultivar x trial.
     */
    term: 'trial' | 'cultivar' | 'residual';
    /**
     * Degrees of freedom.
     */
    df: number;
    /**
     * Sum of squares.
     */
    sum_of_squares: number;
    /**
     * Mean square.
     */
    mean_square: number | null;
    /**
     * F.
     */
    f: number | null;
    /**
     * p.
     */
    p: number | null;
  }[];
  /**
   * Means adjusted for the trials that each cultivar was in, within its linked set.
   *
   * Items: One cultivar.
   */
  adjusted_means: {
    /**
     * The cultivar: an id of cultivars.yaml, or its name.
     */
    cultivar: string;
    /**
     * The adjusted mean.
     */
    mean: number;
    /**
     * Its standard error.
     */
    se: number | null;
    /**
     * Its degrees of freedom.
     */
    df: number | null;
    /**
     * Lower 95% limit, pointwise.
     */
    lower: number | null;
    /**
     * Upper 95% limit.
     */
    upper: number | null;
    /**
     * Means of a linked set that share a letter are not told apart.
     */
    letters: string | null;
    /**
     * How many trials it was in.
     */
    trials: number;
    /**
     * In percent of the adjusted mean of the check cultivar that most trials name, where linked.
     */
    percent_of_check: number | null;
  }[];
  /**
   * Every pair within a linked set, Tukey-Kramer.
   *
   * Items: One pair.
   */
  differences: {
    /**
     * The cultivar: an id of cultivars.yaml, or its name.
     */
    a: string;
    /**
     * The cultivar: an id of cultivars.yaml, or its name.
     */
    b: string;
    /**
     * a - b.
     */
    estimate: number;
    /**
     * Its standard error.
     */
    se: number | null;
    /**
     * Its degrees of freedom.
     */
    df: number | null;
    /**
     * Lower simultaneous 95% limit.
     */
    lower: number | null;
    /**
     * Upper simultaneous 95% limit.
     */
    upper: number | null;
    /**
     * p by Tukey-Kramer.
     */
    p_adjusted: number | null;
  }[];
  /**
   * Steadiness of the cultivars in at least four trials.
   *
   * Items: One cultivar.
   */
  stability: {
    /**
     * The cultivar: an id of cultivars.yaml, or its name.
     */
    cultivar: string;
    /**
     * Trials.
     */
    trials: number;
    /**
     * Finlay and Wilkinson's slope on the trials' means.
     */
    regression_slope: number | null;
    /**
     * Its standard error.
     */
    slope_se: number | null;
    /**
     * Mean square of the deviations from that line.
     */
    deviation_mean_square: number | null;
    /**
     * Wricke's ecovalence.
     */
    ecovalence: number;
    /**
     * Shukla's stability variance; null for a table with holes.
     */
    stability_variance: number | null;
    /**
     * Trials in which it did better than the check there.
     */
    wins: number;
    /**
     * Trials in which it did worse than the check there.
     */
    losses: number;
  }[];
  /**
   * The check cultivar that most trials name.
   */
  check: string | null;
  /**
   * Null where fewer than two trials with an error of their own shared cultivars.
   */
  interaction: {
    /**
     * F.
     */
    f: number | null;
    /**
     * Degrees of freedom.
     */
    df: number;
    /**
     * Degrees of freedom of the pooled error.
     */
    error_df: number;
    /**
     * p.
     */
    p: number | null;
    /**
     * How many trials had an error of their own.
     */
    trials: number;
  } | null;
  /**
   * The adjusted means with the trials taken as a sample (REML).
   *
   * Items: One cultivar.
   */
  random_trials: {
    /**
     * The cultivar: an id of cultivars.yaml, or its name.
     */
    cultivar: string;
    /**
     * The adjusted mean.
     */
    mean: number;
    /**
     * Its standard error, the variance between trials in it.
     */
    se: number | null;
    /**
     * Its degrees of freedom.
     */
    df: number | null;
  }[];
  /**
   * Whether any two cultivars can be compared with an error.
   */
  verdict: 'compared' | 'not compared';
  /**
   * Why a number beside it is null, or why nothing is compared. Empty where there is nothing to say.
   */
  reason: string;
}
