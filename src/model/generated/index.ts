/* Generated from schemas/index.schema.json by `npm run generate`. */

/**
 * Every dataset that a site publishes. Stands at /data/index.json. Addresses are relative to it, so that a copy of the site works where it stands. A later version of this form only adds keys.
 */
export interface DatasetIndex {
  /**
   * This schema, relative to the index.
   */
  $schema: string;
  /**
   * The version of this form; a change that could break a reader raises it.
   */
  form: 1;
  /**
   * The site.
   */
  site: {
    /**
     * The site's title.
     */
    title: string;
    /**
     * Where the site stands.
     */
    address: string;
    /**
     * Who publishes it.
     */
    publisher: string;
    /**
     * The site's language, as a BCP 47 tag.
     */
    language: string;
  };
  /**
   * The datasets in the order of their ids. Planned and growing trials have none.
   */
  datasets: Dataset[];
  /**
   * The list of cultivars of cultivars.yaml, as JSON: what the ids of cultivars mean on this site.
   */
  cultivars?: {
    /**
     * Where it lies.
     */
    address: string;
    /**
     * Its size.
     */
    bytes: number;
    /**
     * Its SHA-256 in hexadecimal.
     */
    sha256: string;
  };
  /**
   * Datasets of other sites that take part in this site's comparisons, in the order of site and id. They are published there and not here.
   *
   * Items: One dataset of another site.
   */
  gathered?: {
    /**
     * The trial's id there.
     */
    id: string;
    /**
     * The trial's name.
     */
    title: string;
    /**
     * The version that was gathered.
     */
    version: string;
    /**
     * Who it is cited by.
     */
    creators: string[];
    /**
     * The SPDX identifier of its licence.
     */
    licence: string;
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
     * Its DOI as an address where it has one, else its data page there.
     */
    identifier: string;
    /**
     * The trial's page there.
     */
    page: string;
    /**
     * Its data page there.
     */
    data: string;
    /**
     * The site that publishes it.
     */
    site: {
      /**
       * What it is called here.
       */
      title: string;
      /**
       * Where it stands.
       */
      address: string;
    };
    /**
     * The day on which this version of it was fetched.
     */
    gathered: string;
  }[];
}
/**
 * One dataset: a finished trial.
 */
export interface Dataset {
  /**
   * The trial's id.
   */
  id: string;
  /**
   * The trial's name.
   */
  title: string;
  /**
   * What it is, in 50 to 5000 characters.
   */
  description: string;
  /**
   * How far the trial has come.
   */
  status: 'finished';
  /**
   * The version of the data, semantic.
   */
  version: string;
  /**
   * The day of this version.
   */
  released: string;
  /**
   * The licence of the data.
   */
  licence: {
    /**
     * The SPDX identifier.
     */
    id: string;
    /**
     * Where its text stands.
     */
    address: string;
  };
  /**
   * The dataset's DOI as an address where it has one, else its data page.
   */
  identifier: string;
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
    species: string | null;
    /**
     * The species in the NCBI taxonomy.
     */
    taxon: string | null;
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
   * Where the trial stood.
   */
  place: {
    /**
     * The place's name.
     */
    name: string;
    /**
     * The region, in words.
     */
    region: string | null;
    /**
     * The country's two-letter code.
     */
    country: string | null;
    /**
     * What stood over the containers.
     */
    setting: string;
  };
  /**
   * How the treatments were laid out.
   */
  design: {
    /**
     * The arrangement of the treatments.
     */
    arrangement: string;
    /**
     * What the treatments were allotted to.
     */
    allotted: string;
    /**
     * Whether lots were drawn.
     */
    randomised: boolean;
    /**
     * How many containers.
     */
    containers: number;
    /**
     * What was varied on purpose.
     */
    factors: {
      /**
       * The factor's id, the name of its column.
       */
      id: string;
      /**
       * The ids of its levels.
       */
      levels: string[];
    }[];
  };
  /**
   * The days of the cuts.
   */
  cuts: string[];
  /**
   * Plants, or pots weighed whole, by what became of them.
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
   * What was measured, the primary variable first.
   */
  variables: {
    /**
     * The variable's id, the name of its column.
     */
    id: string;
    /**
     * Its name in words.
     */
    name: string;
    /**
     * The unit in weights.csv as a UCUM code, null for a plain number.
     */
    unit: string | null;
  }[];
  /**
   * The trial's page.
   */
  page: string;
  /**
   * Its data page.
   */
  data: string;
  /**
   * The archive of all its files.
   */
  archive: string;
  /**
   * Every file of the dataset.
   *
   * Items: One file.
   */
  files: {
    /**
     * The file's name.
     */
    name: string;
    /**
     * Where it lies.
     */
    address: string;
    /**
     * Its media type.
     */
    media_type: string;
    /**
     * Its size.
     */
    bytes: number;
    /**
     * Its SHA-256 in hexadecimal.
     */
    sha256: string;
    /**
     * What it is for.
     */
    description: string;
  }[];
}
