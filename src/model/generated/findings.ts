/* Generated from schemas/findings.schema.json by `npm run generate`. */

/**
 * What a trial's weights support. Weights in g, areas in m2, to full precision. A number that cannot be computed is null beside a reason.
 */
export interface Findings {
  /**
   * The trial's id.
   */
  trial: string;
  /**
   * The version of the data.
   */
  version: string;
  /**
   * The primary variable.
   */
  variable: {
    /**
     * Its id.
     */
    id: string;
    /**
     * Its name.
     */
    name: string;
    /**
     * The unit of every number here: g for weights.
     */
    unit: string;
  };
  /**
   * Plants (or pots weighed whole) by what became of them, over all cuts: each plant is counted once, by its worst record.
   */
  counts: {
    /**
     * Plants set.
     */
    set: number;
    /**
     * Weighed at every cut.
     */
    weighed: number;
    /**
     * Dead.
     */
    dead: number;
    /**
     * Culled.
     */
    culled: number;
    /**
     * There, weight unknown, at some cut.
     */
    not_weighed: number;
    /**
     * Never planted.
     */
    not_planted: number;
    /**
     * Alive, but gave no further cut.
     */
    no_regrowth: number;
  };
  /**
   * Each treatment combination over all cuts.
   */
  treatments: Description[];
  /**
   * Each treatment combination, cut by cut, where there is more than one cut.
   *
   * Items: One cut.
   */
  treatments_by_cut: {
    /**
     * The cut.
     */
    cut: number;
    /**
     * Each treatment combination.
     */
    treatments: Description[];
  }[];
  /**
   * What the design allows to be said: one entry for each measure and cut.
   */
  inference: Inference[];
  /**
   * Effects of place within each container, after treatments are allowed for.
   *
   * Items: One container.
   */
  position: {
    /**
     * The container.
     */
    container: string;
    /**
     * What is analysed: the weight of a pot, of a plant set, or of a plant harvested.
     */
    measure: 'per_pot' | 'per_plant_set' | 'per_plant_harvested';
    /**
     * The cut: 1, 2, ..., or 'all' for all cuts together.
     */
    cut: number | 'all';
    /**
     * Along the rows: from row 1 on.
     */
    rows: {
      /**
       * Change for one step along the grid.
       */
      slope: number | null;
      /**
       * Its standard error.
       */
      se: number | null;
      /**
       * Slope over standard error.
       */
      t: number | null;
      /**
       * Its degrees of freedom.
       */
      df: number | null;
      /**
       * Two-sided p.
       */
      p: number | null;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    };
    /**
     * Along the columns: from column 1 on.
     */
    columns: {
      /**
       * Change for one step along the grid.
       */
      slope: number | null;
      /**
       * Its standard error.
       */
      se: number | null;
      /**
       * Slope over standard error.
       */
      t: number | null;
      /**
       * Its degrees of freedom.
       */
      df: number | null;
      /**
       * Two-sided p.
       */
      p: number | null;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    };
    /**
     * Positions on the edge of the grid.
     */
    edge: {
      /**
       * The mean.
       */
      mean: number | null;
      /**
       * How many positions.
       */
      n: number;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    };
    /**
     * Positions not on the edge.
     */
    interior: {
      /**
       * The mean.
       */
      mean: number | null;
      /**
       * How many positions.
       */
      n: number;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    };
    /**
     * Moran's I of the residuals of treatments, rook neighbours, binary weights.
     */
    morans_i: {
      /**
       * Moran's I.
       */
      i: number | null;
      /**
       * Its expectation for residuals (Cliff and Ord).
       */
      expected: number | null;
      /**
       * Its variance (Cliff and Ord).
       */
      variance: number | null;
      /**
       * One-sided p of a positive autocorrelation, from the normal approximation.
       */
      p: number | null;
      /**
       * The same p by permutation on a small grid.
       */
      exact_p?: number | null;
      /**
       * How many permutations stand behind it.
       */
      permutations?: number;
      /**
       * Whether every permutation was counted.
       */
      exact?: boolean;
      /**
       * The seed of the draws.
       */
      seed?: number;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    };
    /**
     * The means of the halves of the grid.
     *
     * Items: One half.
     */
    halves: {
      /**
       * The landmark, or the side opposite it.
       */
      side: string;
      /**
       * The mean.
       */
      mean: number | null;
      /**
       * How many positions.
       */
      n: number;
    }[];
    /**
     * Treatment means adjusted for place, beside the plain ones.
     *
     * Items: One treatment.
     */
    adjusted_means?: {
      treatment: Treatment;
      /**
       * The plain mean.
       */
      plain: number | null;
      /**
       * The mean adjusted for row and column slopes.
       */
      adjusted: number | null;
    }[];
    /**
     * What is left at each position after treatments.
     *
     * Items: One position.
     */
    residuals?: {
      /**
       * Row.
       */
      row: number;
      /**
       * Column.
       */
      column: number;
      /**
       * The residual, in the variable's unit.
       */
      residual: number;
    }[];
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Water used by each container.
   *
   * Items: One container.
   */
  water: {
    /**
     * The container.
     */
    container: string;
    /**
     * Litres used.
     */
    used_L: number | null;
    /**
     * Litres for each kg of fresh weight.
     */
    L_per_kg: number | null;
    /**
     * What a reading error of 2 mm at each end makes of it, in litres.
     */
    uncertainty_L?: number | null;
    /**
     * Whole days between the first and the last reading of the level.
     */
    days?: number;
    /**
     * Plants set in the container; those that died later count.
     */
    plants?: number;
    /**
     * Litres for each plant set and each day between the readings.
     */
    L_per_plant_day?: number | null;
    /**
     * Litres left in the container after the last reading, reckoned from its volume at the first.
     */
    left_L?: number | null;
    /**
     * Whether the first fill and the rain, without what was added, would have lasted to the container's last cut; days after the last reading at the use between the last two. Null where it is within the uncertainty.
     */
    fill_lasts?: boolean | null;
    /**
     * How it was reckoned.
     */
    method: string;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * What the recipe amounts to.
   */
  nutrients: {
    /**
     * Milligrams per litre by element or ion; null where a label does not give it.
     */
    mg_per_L: {
      [k: string]: number | null;
    };
    /**
     * Millimoles per litre of the same.
     */
    mmol_per_L?: {
      [k: string]: number | null;
    };
    /**
     * Milliequivalents per litre of each ion that the recipe holds, without sign.
     */
    meq_per_L?: {
      [k: string]: number | null;
    };
    /**
     * Milliequivalents of cations per litre.
     */
    cations_meq: number | null;
    /**
     * Milliequivalents of anions per litre.
     */
    anions_meq: number | null;
    /**
     * Electrical conductivity by several published formulas.
     *
     * Items: One estimate.
     */
    ec_estimates: {
      /**
       * The formula and its source.
       */
      formula: string;
      /**
       * mS/cm at 25 C.
       */
      value: number | null;
    }[];
    /**
     * What to look out for.
     *
     * Items: One warning.
     */
    warnings: string[];
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  } | null;
  /**
   * Replicates needed to tell a given difference.
   *
   * Items: One case.
   */
  next_trial: {
    /**
     * The difference, in percent of the mean.
     */
    difference_percent: number;
    /**
     * The power.
     */
    power: number;
    /**
     * Units of each treatment.
     */
    replicates_needed: number | null;
    /**
     * The coefficient of variation between units, in percent.
     */
    cv_used: number | null;
    /**
     * Where that came from.
     */
    from: string;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Every variable but the primary one, described as what it is, cut by cut; absent where there is none.
   *
   * Items: One variable at one cut, or one panel of judges.
   */
  other_variables?: {
    /**
     * What was recorded.
     */
    variable: {
      /**
       * The variable's id, or the panel's name.
       */
      id: string;
      /**
       * Its name.
       */
      name: string;
      /**
       * Its UCUM code, g for weights; empty for marks.
       */
      unit: string;
      /**
       * What kind of value it is.
       */
      kind: 'measured' | 'counted' | 'scored' | 'yes or no';
      /**
       * What each value belongs to.
       */
      of: 'plant' | 'pot';
      /**
       * How many judges; each plant or pot then counts with the median of their marks.
       */
      judges?: number;
    };
    /**
     * The cut at which it was recorded.
     */
    cut: number;
    /**
     * One entry a treatment.
     *
     * Items: One treatment.
     */
    treatments: {
      /**
       * Factor id to level id.
       */
      treatment: {
        [k: string]: string;
      };
      /**
       * Values known.
       */
      n: number;
      /**
       * What grew and has no value.
       */
      missing: number;
      /**
       * The mean; null for marks, which are no amounts.
       */
      mean: number | null;
      /**
       * The standard deviation; null for marks.
       */
      sd: number | null;
      /**
       * The lowest.
       */
      minimum: number | null;
      /**
       * The lower quartile (type 7).
       */
      lower_quartile: number | null;
      /**
       * The median.
       */
      median: number | null;
      /**
       * The upper quartile (type 7).
       */
      upper_quartile: number | null;
      /**
       * The highest.
       */
      maximum: number | null;
      /**
       * How often each mark was given, ascending; null for what was measured.
       */
      counts:
        | {
            /**
             * The mark.
             */
            value: number;
            /**
             * How often.
             */
            count: number;
          }[]
        | null;
      /**
       * For yes or no: the part that was yes.
       */
      proportion: {
        /**
         * How many were yes.
         */
        yes: number;
        /**
         * Of n.
         */
        proportion: number;
        /**
         * Wilson's 95% interval; null where these are not the replicates.
         */
        lower: number | null;
        /**
         * Wilson's 95% interval; null where these are not the replicates.
         */
        upper: number | null;
      } | null;
      /**
       * Why a number is not there.
       */
      reason?: string;
    }[];
  }[];
}
/**
 * The description of one treatment combination.
 */
export interface Description {
  treatment: Treatment;
  /**
   * Containers it stood in.
   */
  containers: number;
  /**
   * Pots.
   */
  pots: number;
  /**
   * Plants set.
   */
  plants: number;
  /**
   * Per plant harvested: dead plants and those without regrowth left out.
   */
  per_plant_harvested: Summary | null;
  /**
   * Per plant set: dead plants and those without regrowth as 0.
   */
  per_plant_set: Summary | null;
  /**
   * Per pot: the sum of its plants.
   */
  per_pot: Summary | null;
  /**
   * Per container: the sum of the treatment's pots in it.
   */
  per_container: Summary | null;
  /**
   * Kilograms per square metre of cover, for the part of the cover that the treatment had.
   */
  kg_per_m2: number | null;
  /**
   * Grams per square metre of cover and day from transplanting (from sowing where it was sown in place) to the last cut.
   */
  g_per_m2_day: number | null;
  /**
   * Days from sowing to the last cut (or to this cut).
   */
  days_from_sowing: number | null;
  /**
   * Days from transplanting to the last cut (or to this cut).
   */
  days_from_transplanting: number | null;
  /**
   * Why a number beside it is null.
   */
  reason?: string;
}
/**
 * Factor id to level id; factors averaged over are left out.
 */
export interface Treatment {
  [k: string]: string;
}
/**
 * A description of some values.
 */
export interface Summary {
  /**
   * How many values.
   */
  n: number;
  /**
   * The arithmetic mean.
   */
  mean: number | null;
  /**
   * The standard deviation (divisor n - 1).
   */
  sd: number | null;
  /**
   * The standard error of the mean, only where these values are the replicates.
   */
  se: number | null;
  /**
   * The coefficient of variation, in percent.
   */
  cv: number | null;
  /**
   * The smallest.
   */
  minimum: number | null;
  /**
   * The lower quartile (type 7).
   */
  lower_quartile: number | null;
  /**
   * The median.
   */
  median: number | null;
  /**
   * The upper quartile (type 7).
   */
  upper_quartile: number | null;
  /**
   * The largest.
   */
  maximum: number | null;
  /**
   * 95% interval of the mean by t, only where these values are the replicates.
   */
  ci95: [number, number] | null;
  /**
   * Values unknown and left out.
   */
  missing?: number;
  /**
   * Why a number beside it is null.
   */
  reason?: string;
}
/**
 * One analysis.
 */
export interface Inference {
  /**
   * What is analysed: the weight of a pot, of a plant set, or of a plant harvested.
   */
  measure: 'per_pot' | 'per_plant_set' | 'per_plant_harvested';
  /**
   * The cut: 1, 2, ..., or 'all' for all cuts together.
   */
  cut: number | 'all';
  /**
   * The experimental unit of each factor.
   *
   * Items: One factor.
   */
  units: {
    /**
     * The factor.
     */
    factor: string;
    /**
     * The coarsest stratum within which the factor never varies.
     */
    experimental_unit: 'container' | 'plot' | 'position';
    /**
     * Units with a weight left, by level.
     */
    replicates: {
      [k: string]: number;
    };
  }[];
  /**
   * Whether the design allows a test.
   */
  verdict: 'tested' | 'not tested';
  /**
   * Why not, in a grower's words; or what must be said beside the test. Empty where there is nothing to say.
   */
  reason: string;
  /**
   * How it was tested.
   */
  method: 'analysis of variance' | 'mixed model' | null;
  /**
   * The model in words.
   */
  model: string;
  /**
   * The analysis of variance.
   *
   * Items: One row.
   */
  anova: {
    /**
     * The term.
     */
    term: string;
    /**
     * Degrees of freedom.
     */
    df: number | null;
    /**
     * Sum of squares, on the plants' scale.
     */
    sum_of_squares: number | null;
    /**
     * Mean square.
     */
    mean_square: number | null;
    /**
     * The stratum whose error it is tested against.
     */
    error: string | null;
    /**
     * Its degrees of freedom.
     */
    error_df: number | null;
    /**
     * F.
     */
    f: number | null;
    /**
     * p.
     */
    p: number | null;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Variance by stratum.
   *
   * Items: One component.
   */
  variance_components: {
    /**
     * The stratum.
     */
    term: string;
    /**
     * The variance.
     */
    variance: number | null;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Adjusted means, a whole family for each term.
   *
   * Items: One mean.
   */
  means: {
    treatment: Treatment;
    /**
     * The adjusted mean.
     */
    mean: number | null;
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
     * Means that share a letter are not told apart.
     */
    letters: string | null;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Every pair within a family, Tukey-Kramer.
   *
   * Items: One pair.
   */
  differences: {
    a: Treatment;
    b: Treatment;
    /**
     * a - b.
     */
    estimate: number | null;
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
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Every level against the check, Dunnett's, two-sided.
   *
   * Items: One level.
   */
  against_check: {
    treatment: Treatment;
    /**
     * Level - check.
     */
    estimate: number | null;
    /**
     * Lower simultaneous 95% limit.
     */
    lower: number | null;
    /**
     * Upper simultaneous 95% limit.
     */
    upper: number | null;
    /**
     * p by Dunnett's.
     */
    p_adjusted: number | null;
    /**
     * The level in percent of the check.
     */
    percent_of_check: number | null;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  }[];
  /**
   * Where F is significant and replication equal, else null.
   */
  least_significant_difference: number | null;
  /**
   * The residual's standard deviation in the stratum of the finest factor, in percent of the mean.
   */
  cv_percent: number | null;
  /**
   * The level of the tests and letters.
   */
  alpha: number;
  /**
   * Whether the analysis may be relied on.
   */
  checks: {
    /**
     * Shapiro-Wilk on the residuals of unit means.
     */
    shapiro_wilk: {
      /**
       * W.
       */
      w: number | null;
      /**
       * p.
       */
      p: number | null;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    } | null;
    /**
     * Brown-Forsythe on unit means by treatment combination.
     */
    brown_forsythe: {
      /**
       * F.
       */
      f: number | null;
      /**
       * Degrees of freedom.
       */
      df1: number | null;
      /**
       * Degrees of freedom.
       */
      df2: number | null;
      /**
       * p.
       */
      p: number | null;
      /**
       * Why a number beside it is null.
       */
      reason?: string;
    } | null;
    /**
     * Positions whose standardised residual is unusual.
     *
     * Items: One position.
     */
    unusual: {
      /**
       * Container.
       */
      container: string;
      /**
       * Row.
       */
      row: number;
      /**
       * Column.
       */
      column: number;
      /**
       * Residual.
       */
      residual: number;
    }[];
  } | null;
  /**
   * The randomisation test.
   */
  randomisation_test: {
    /**
     * What was compared.
     */
    statistic: string;
    /**
     * p.
     */
    p: number | null;
    /**
     * Arrangements counted or drawn.
     */
    arrangements: number;
    /**
     * Whether every arrangement was counted.
     */
    exact: boolean;
    /**
     * The seed of the draws.
     */
    seed: number | null;
    /**
     * The least p that the design's arrangements allow, whatever the weights; absent where arrangements were drawn.
     */
    least_p?: number;
    /**
     * Said where so few arrangements were possible that p cannot be small.
     */
    note?: string;
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  } | null;
  /**
   * The seed of the directions over which the chances of against_check are averaged, good to about one part in a thousand, where more than 12 comparisons are related in no simple way or their correlations are all but singular; absent where nothing is drawn.
   */
  against_check_seed?: number;
  /**
   * Standard errors of the differences where they differ.
   */
  sed?: {
    /**
     * Smallest.
     */
    smallest: number;
    /**
     * Mean.
     */
    mean: number;
    /**
     * Largest.
     */
    largest: number;
  } | null;
  /**
   * How many plants of each unit are worth weighing.
   */
  plants_per_unit?: {
    /**
     * Plants weighed in each unit, on average.
     */
    weighed: number;
    /**
     * Variance between units.
     */
    unit_variance: number | null;
    /**
     * Variance between plants of a unit.
     */
    plant_variance: number | null;
    /**
     * Variance of a treatment mean with fewer or more plants weighed in each unit, in percent of the present.
     *
     * Items: One number of plants.
     */
    gain: {
      /**
       * Plants of each unit.
       */
      plants: number;
      /**
       * In percent of the present variance.
       */
      variance_percent: number;
    }[];
    /**
     * Why a number beside it is null.
     */
    reason?: string;
  } | null;
  /**
   * The analysis on another scale, where spread grows with the mean.
   */
  transformed?: {
    /**
     * The scale.
     */
    scale: 'logarithm' | 'square root';
    /**
     * F and p by term.
     *
     * Items: One term.
     */
    terms: {
      /**
       * The term.
       */
      term: string;
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
     * Back-transformed means.
     *
     * Items: One mean.
     */
    means: {
      treatment: Treatment;
      /**
       * Back-transformed mean.
       */
      mean: number | null;
      /**
       * Lower limit.
       */
      lower: number | null;
      /**
       * Upper limit.
       */
      upper: number | null;
    }[];
    /**
     * Whether a term crosses alpha.
     */
    conclusion_changes: boolean;
  } | null;
  /**
   * For scores and counts.
   */
  rank_test?: {
    /**
     * By design.
     */
    method: 'Kruskal-Wallis' | 'Friedman';
    /**
     * Chi-squared.
     */
    statistic: number | null;
    /**
     * Degrees of freedom.
     */
    df: number | null;
    /**
     * p.
     */
    p: number | null;
    /**
     * Medians.
     *
     * Items: One treatment.
     */
    medians: {
      treatment: Treatment;
      /**
       * Median.
       */
      median: number | null;
      /**
       * n.
       */
      n: number;
    }[];
    /**
     * Why a number beside it is null, or which blocks the ranks leave out.
     */
    reason?: string;
  } | null;
  /**
   * Residual and fitted value of each unit that was analysed.
   *
   * Items: One unit.
   */
  residuals?: {
    /**
     * The unit.
     */
    unit: string;
    /**
     * Container.
     */
    container: string;
    /**
     * Fitted.
     */
    fitted: number;
    /**
     * Residual.
     */
    residual: number;
    /**
     * Expected normal score of the residual.
     */
    normal_score: number;
  }[];
}
