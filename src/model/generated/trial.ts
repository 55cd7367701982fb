/* Generated from schemas/trial.schema.json by `npm run generate`. */

/**
 * A day as year-month-day (ISO 8601).
 */
export type Date = string;
/**
 * Letters, digits and underscores, a letter first.
 */
export type ColumnId = string;
/**
 * A unit of weight.
 */
export type MassUnit = 'g' | 'kg' | 'mg' | 'oz' | 'lb' | '[oz_av]' | '[lb_av]';

/**
 * One growing trial: what was asked, what was grown, how it was laid out, what was measured. Stands in trial.yaml of the trial's folder.
 */
export interface TrialMetadata {
  /**
   * The trial's name, as a reader will see it.
   */
  title: string;
  /**
   * The version of the data: three numbers, major.minor.patch. Equals the newest of the releases.
   */
  version: string;
  /**
   * How far the trial has come. A planned or growing trial has a page and no dataset.
   */
  status: 'planned' | 'growing' | 'finished';
  /**
   * The question that the trial was laid out to answer.
   */
  question: string;
  /**
   * One paragraph on the trial, 50 to 5000 characters.
   */
  summary?: string;
  /**
   * What was grown.
   */
  crop: {
    /**
     * The crop's common name.
     */
    name: string;
    /**
     * The scientific name.
     */
    species?: string;
    /**
     * The species in the NCBI taxonomy.
     */
    taxon?: string;
    /**
     * The cultivar of a trial of one cultivar: an id of cultivars.yaml, or a name.
     */
    cultivar?: string;
  };
  /**
   * The growing season.
   */
  season: {
    /**
     * The calendar year of the harvest.
     */
    year: number;
    /**
     * The season's name.
     */
    name: string;
  };
  /**
   * The trial's dates, each written year-month-day. Cuts are needed once the trial is finished.
   */
  dates?: {
    sown?: Date;
    germinated?: Date;
    transplanted?: Date;
    /**
     * The day of each cut, in order; a crop that is harvested once has one.
     *
     * @minItems 1
     * @maxItems 60
     */
    cuts?: [Date, ...Date[]];
  };
  /**
   * Where the trial stood.
   */
  site: {
    /**
     * The site's name.
     */
    name: string;
    /**
     * The country's two-letter code (ISO 3166-1 alpha-2).
     */
    country?: string;
    /**
     * The region, in words.
     */
    region?: string;
    /**
     * Degrees north, at most 2 decimals: a garden is somebody's home.
     */
    latitude?: number;
    /**
     * Degrees east, at most 2 decimals: a garden is somebody's home.
     */
    longitude?: number;
    /**
     * Height above sea level in metres.
     */
    elevation_m?: number;
    /**
     * What stood over the containers.
     */
    setting: 'open air' | 'rain shelter' | 'shade house' | 'greenhouse' | 'indoors';
  };
  /**
   * Who grew, recorded and wrote.
   *
   * @minItems 1
   */
  people: [
    {
      /**
       * The person's name.
       */
      name: string;
      /**
       * The part they had in the trial.
       */
      part: 'grower' | 'recorder' | 'author' | 'contact';
      /**
       * The person's ORCID.
       */
      orcid?: string;
      /**
       * The person's e-mail. It is published nowhere unless email_public is true.
       */
      email?: string;
      /**
       * Whether the person lets their e-mail be published; no where absent.
       */
      email_public?: boolean;
    },
    ...{
      /**
       * The person's name.
       */
      name: string;
      /**
       * The part they had in the trial.
       */
      part: 'grower' | 'recorder' | 'author' | 'contact';
      /**
       * The person's ORCID.
       */
      orcid?: string;
      /**
       * The person's e-mail. It is published nowhere unless email_public is true.
       */
      email?: string;
      /**
       * Whether the person lets their e-mail be published; no where absent.
       */
      email_public?: boolean;
    }[]
  ];
  /**
   * The licence of the data: an SPDX identifier.
   */
  licence: string;
  /**
   * What was varied on purpose.
   *
   * @minItems 1
   */
  factors?: [
    {
      id: ColumnId;
      /**
       * The factor's name in words.
       */
      name: string;
      /**
       * Says that the levels are cultivars.
       */
      kind?: 'cultivar';
      /**
       * The factor's levels, at least one.
       *
       * @minItems 1
       */
      levels: [
        {
          /**
           * The level's id, as layout.csv writes it; quote a number so that it stays text.
           */
          id: string;
          /**
           * The level's name in words.
           */
          name?: string;
          /**
           * A remark on the level.
           */
          note?: string;
        },
        ...{
          /**
           * The level's id, as layout.csv writes it; quote a number so that it stays text.
           */
          id: string;
          /**
           * The level's name in words.
           */
          name?: string;
          /**
           * A remark on the level.
           */
          note?: string;
        }[]
      ];
      /**
       * The level that the others are compared with (the check cultivar, or the control).
       */
      check?: string;
    },
    ...{
      id: ColumnId;
      /**
       * The factor's name in words.
       */
      name: string;
      /**
       * Says that the levels are cultivars.
       */
      kind?: 'cultivar';
      /**
       * The factor's levels, at least one.
       *
       * @minItems 1
       */
      levels: [
        {
          /**
           * The level's id, as layout.csv writes it; quote a number so that it stays text.
           */
          id: string;
          /**
           * The level's name in words.
           */
          name?: string;
          /**
           * A remark on the level.
           */
          note?: string;
        },
        ...{
          /**
           * The level's id, as layout.csv writes it; quote a number so that it stays text.
           */
          id: string;
          /**
           * The level's name in words.
           */
          name?: string;
          /**
           * A remark on the level.
           */
          note?: string;
        }[]
      ];
      /**
       * The level that the others are compared with (the check cultivar, or the control).
       */
      check?: string;
    }[]
  ];
  /**
   * How the treatments were laid out.
   */
  design: {
    /**
     * The arrangement of the treatments.
     */
    arrangement:
      'unreplicated' | 'completely randomised' | 'randomised blocks' | 'latin square' | 'split plot';
    /**
     * What the treatments were allotted to; in a split plot, what the finest factor was allotted to.
     */
    allotted: 'container' | 'plot' | 'position';
    /**
     * Whether lots were drawn.
     */
    randomised: boolean;
    /**
     * The published seed of the lot.
     */
    seed?: number;
    /**
     * Only where the layout was drawn from the seed by a method that this site publishes: the check then draws it again and compares.
     */
    lot?: {
      /**
       * The name of the method, described on the page of methods.
       */
      method: 'lots-1';
    };
  };
  /**
   * The containers, each with its grid of positions.
   *
   * @minItems 1
   */
  containers: [
    {
      /**
       * The container's id, as the CSV files write it.
       */
      id: string;
      /**
       * What the container is.
       */
      kind: 'tank' | 'tray' | 'gutter' | 'bed' | 'bench';
      /**
       * Rows of positions.
       */
      rows: number;
      /**
       * Columns of positions.
       */
      columns: number;
      /**
       * The landmark beside row 1, as the harvester faces it.
       */
      row_1?: string;
      /**
       * The landmark beside column 1.
       */
      column_1?: string;
      /**
       * The block that the whole container belongs to.
       */
      block?: string;
      cover?: Rectangle;
      inside?: Rectangle;
      /**
       * How much solution the container holds.
       */
      volume?: {
        /**
         * The number.
         */
        value: number;
        /**
         * L, mL, m3, or gal (US gallon).
         */
        unit: 'L' | 'mL' | 'm3' | 'gal';
      };
      /**
       * Only where the whole container has one treatment: factor id to level id.
       */
      treatment?: {
        [k: string]: string;
      };
      /**
       * An independent total of the container's harvest over all cuts, weighed apart from the plants.
       */
      weighed_total?: {
        /**
         * The number.
         */
        value: number;
        unit: MassUnit;
      };
    },
    ...{
      /**
       * The container's id, as the CSV files write it.
       */
      id: string;
      /**
       * What the container is.
       */
      kind: 'tank' | 'tray' | 'gutter' | 'bed' | 'bench';
      /**
       * Rows of positions.
       */
      rows: number;
      /**
       * Columns of positions.
       */
      columns: number;
      /**
       * The landmark beside row 1, as the harvester faces it.
       */
      row_1?: string;
      /**
       * The landmark beside column 1.
       */
      column_1?: string;
      /**
       * The block that the whole container belongs to.
       */
      block?: string;
      cover?: Rectangle;
      inside?: Rectangle;
      /**
       * How much solution the container holds.
       */
      volume?: {
        /**
         * The number.
         */
        value: number;
        /**
         * L, mL, m3, or gal (US gallon).
         */
        unit: 'L' | 'mL' | 'm3' | 'gal';
      };
      /**
       * Only where the whole container has one treatment: factor id to level id.
       */
      treatment?: {
        [k: string]: string;
      };
      /**
       * An independent total of the container's harvest over all cuts, weighed apart from the plants.
       */
      weighed_total?: {
        /**
         * The number.
         */
        value: number;
        unit: MassUnit;
      };
    }[]
  ];
  /**
   * What was measured, counted or scored; the first is the primary one.
   *
   * @minItems 1
   */
  variables: [
    {
      id: ColumnId;
      /**
       * The variable's name in words.
       */
      name: string;
      /**
       * What each value belongs to.
       */
      of: 'plant' | 'pot';
      /**
       * How it came about.
       */
      kind: 'measured' | 'counted' | 'scored';
      /**
       * A UCUM code, or oz or lb. Weights are converted to g.
       */
      unit?: string;
      /**
       * The scale's smallest step, in the variable's unit.
       */
      resolution?: number;
      /**
       * The lowest value that would not surprise, in the variable's unit.
       */
      lowest?: number;
      /**
       * The highest value that would not surprise, in the variable's unit.
       */
      highest?: number;
      /**
       * What the marks of a scored variable are: yes or no (1 and 0), or growth stages by BBCH code (0 to 99).
       */
      scale?: 'yes or no' | 'BBCH';
      /**
       * The marks of a scored variable and what each means.
       */
      marks?: {
        [k: string]: string;
      };
      /**
       * What several tasters or judges scored: variables of the same panel are one judgement, each by another person.
       */
      panel?: string;
      /**
       * Who of the panel gave these marks: initials or a letter.
       */
      judge?: string;
      /**
       * Whether the judge did not know the treatments.
       */
      blind?: boolean;
      /**
       * The trait in the Plant Trait Ontology.
       */
      trait?: string;
      /**
       * How it was measured.
       */
      note?: string;
    },
    ...{
      id: ColumnId;
      /**
       * The variable's name in words.
       */
      name: string;
      /**
       * What each value belongs to.
       */
      of: 'plant' | 'pot';
      /**
       * How it came about.
       */
      kind: 'measured' | 'counted' | 'scored';
      /**
       * A UCUM code, or oz or lb. Weights are converted to g.
       */
      unit?: string;
      /**
       * The scale's smallest step, in the variable's unit.
       */
      resolution?: number;
      /**
       * The lowest value that would not surprise, in the variable's unit.
       */
      lowest?: number;
      /**
       * The highest value that would not surprise, in the variable's unit.
       */
      highest?: number;
      /**
       * What the marks of a scored variable are: yes or no (1 and 0), or growth stages by BBCH code (0 to 99).
       */
      scale?: 'yes or no' | 'BBCH';
      /**
       * The marks of a scored variable and what each means.
       */
      marks?: {
        [k: string]: string;
      };
      /**
       * What several tasters or judges scored: variables of the same panel are one judgement, each by another person.
       */
      panel?: string;
      /**
       * Who of the panel gave these marks: initials or a letter.
       */
      judge?: string;
      /**
       * Whether the judge did not know the treatments.
       */
      blind?: boolean;
      /**
       * The trait in the Plant Trait Ontology.
       */
      trait?: string;
      /**
       * How it was measured.
       */
      note?: string;
    }[]
  ];
  /**
   * What went into the solution.
   */
  nutrients?: {
    /**
     * Milligrams per litre that the source water already holds, by element.
     */
    water?: {
      [k: string]: number;
    };
    /**
     * The salts, as their labels say.
     *
     * @minItems 1
     */
    salts?: [
      {
        /**
         * The salt's name.
         */
        name: string;
        /**
         * Grams in a litre of the finished solution.
         */
        grams_per_litre: number;
        /**
         * The label's analysis in percent by weight: N, P2O5 or P, K2O or K, CaO or Ca, MgO or Mg, S and others.
         */
        percent?: {
          [k: string]: number;
        };
        /**
         * The chemical formula of a pure salt, hydrate water included.
         */
        formula?: string;
        /**
         * The stock solution that it goes into.
         */
        stock?: string;
      },
      ...{
        /**
         * The salt's name.
         */
        name: string;
        /**
         * Grams in a litre of the finished solution.
         */
        grams_per_litre: number;
        /**
         * The label's analysis in percent by weight: N, P2O5 or P, K2O or K, CaO or Ca, MgO or Mg, S and others.
         */
        percent?: {
          [k: string]: number;
        };
        /**
         * The chemical formula of a pure salt, hydrate water included.
         */
        formula?: string;
        /**
         * The stock solution that it goes into.
         */
        stock?: string;
      }[]
    ];
    /**
     * One part of stock in this many parts of solution.
     */
    stock_ratio?: number;
  };
  /**
   * What happened, from the notebook.
   */
  events?: {
    date: Date;
    /**
     * The container, or container, rows and columns.
     */
    where?: string;
    /**
     * What was seen or done.
     */
    what: string;
  }[];
  /**
   * Photographs in the trial's folder: JPEG, PNG or WebP.
   */
  photos?: {
    /**
     * The file, from the trial's folder on.
     */
    file: string;
    date?: Date;
    /**
     * The container or position that it shows; photographs of one place stand in a strip, oldest first.
     */
    where?: string;
    /**
     * The caption.
     */
    caption?: string;
    /**
     * What the picture shows, for those who do not see it.
     */
    alt: string;
  }[];
  /**
   * Works and pages that belong to the trial.
   */
  related?: {
    /**
     * What the value is.
     */
    kind: 'doi' | 'orcid' | 'url';
    /**
     * The DOI, the ORCID or the http(s) address.
     */
    value: string;
    /**
     * 'this' where the value is the dataset's own DOI.
     */
    of?: 'this';
    /**
     * What it is.
     */
    note?: string;
  }[];
  /**
   * Problems that the grower has looked into and lets stand as open queries.
   */
  accepted?: {
    /**
     * The rule's name, as check prints it.
     */
    rule: string;
    /**
     * The container, position or file it concerns.
     */
    where?: string;
    /**
     * Why it stands.
     */
    reason: string;
  }[];
  /**
   * The versions of the data, oldest first. Needed once the trial is finished.
   *
   * @minItems 1
   */
  releases?: [
    {
      /**
       * Three numbers.
       */
      version: string;
      date: Date;
      /**
       * What changed.
       */
      note?: string;
    },
    ...{
      /**
       * Three numbers.
       */
      version: string;
      date: Date;
      /**
       * What changed.
       */
      note?: string;
    }[]
  ];
  /**
   * The grower's own spreadsheets that harvest.csv was brought in from, a table each, and how each was read.
   *
   * @maxItems 200
   */
  sources?: {
    /**
     * The spreadsheet as it was, kept in the trial's folder under source/.
     */
    file: string;
    /**
     * The SHA-256 sum of that file.
     */
    sha256: string;
    /**
     * The sheet that the table stands on; absent for CSV.
     */
    sheet?: string;
    /**
     * True where each plant has a column and each variable a row.
     */
    turned?: boolean;
    /**
     * The row or rows of headings.
     */
    headings: string;
    /**
     * The first and last row of data.
     */
    rows: string;
    /**
     * Rows in between that are no data, such as totals.
     *
     * @maxItems 10000
     */
    left_out?: string[];
    /**
     * What each column was taken for.
     */
    columns: {
      [k: string]: string;
    };
    /**
     * What is so of every row, where no column says it.
     */
    always?: {
      /**
       * The container of every row.
       */
      container?: string;
      /**
       * The row in the container of every row.
       */
      row?: string;
      /**
       * The column in the container of every row.
       */
      column?: string;
      /**
       * The plant of every row.
       */
      plant?: string;
      /**
       * The cut of every row.
       */
      cut?: string;
      date?: Date;
    };
    /**
     * True where a row with a container's name alone gives the container of the rows beneath.
     */
    titles?: boolean;
    /**
     * Words that stand in the place of a weight, and the status that each means, or `blank`, or a number.
     */
    words?: {
      [k: string]: string;
    };
    /**
     * The decimal mark of numbers that are text.
     */
    decimal?: '.' | ',';
    /**
     * How dates in digits were read.
     */
    dates?: 'day first' | 'month first';
  }[];
  /**
   * How the grower's own CSV files are to be read.
   */
  harvest?: {
    /**
     * The grower's own column for each of ours.
     */
    columns?: {
      [k: string]: {
        /**
         * The heading in the grower's file.
         */
        column: string;
        /**
         * The unit in the grower's file.
         */
        unit?: string;
      };
    };
    /**
     * What stands between two cells.
     */
    delimiter?: ',' | ';' | '\t' | '|';
    /**
     * The decimal mark.
     */
    decimal?: '.' | ',';
  };
}
/**
 * A rectangle: length, width and their unit.
 */
export interface Rectangle {
  /**
   * The longer side.
   */
  length: number;
  /**
   * The shorter side.
   */
  width: number;
  /**
   * mm, cm, m, in or ft.
   */
  unit: 'mm' | 'cm' | 'm' | 'in' | 'ft';
}
