/* Generated from schemas/sheet.schema.json by `npm run generate`. */

/**
 * What stands between two lines of --- at the top of a fact sheet. A fact sheet of one trial may leave out what its trial.yaml says.
 */
export interface FactSheetFrontMatter {
  /**
   * The title of the sheet.
   */
  title: string;
  /**
   * One or two sentences for the list of fact sheets and for search engines.
   */
  summary: string;
  /**
   * The trials that the sheet speaks of, by the names of their folders.
   *
   * @minItems 1
   * @maxItems 100
   */
  trials: [string, ...string[]];
  /**
   * The day of this state of the sheet.
   */
  date: string;
  /**
   * Who wrote it, by name.
   *
   * @minItems 1
   * @maxItems 50
   */
  people?: [string, ...string[]];
}
