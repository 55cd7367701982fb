/* Generated from schemas/cultivars.schema.json by `npm run generate`. */

/**
 * The cultivars that trials may name. Stands in cultivars.yaml of the content folder.
 */
export type Cultivars = Cultivar[];

/**
 * One cultivar.
 */
export interface Cultivar {
  /**
   * Lower-case letters, digits and hyphens; the address of the cultivar's page.
   */
  id: string;
  /**
   * The cultivar's name.
   */
  name: string;
  /**
   * The scientific name.
   */
  species?: string;
  /**
   * Other names it goes by.
   */
  synonyms?: string[];
  /**
   * What a grower should know of it.
   */
  note?: string;
}
