/* Generated from schemas/site.schema.json by `npm run generate`. */

/**
 * What the whole site shares. Stands in site.yaml of the content folder.
 */
export interface SiteSettings {
  /**
   * The site's title.
   */
  title: string;
  /**
   * What this site is, in a sentence or two.
   */
  description?: string;
  /**
   * Where the site will stand, with its path.
   */
  url: string;
  /**
   * Who publishes it: a person or a group.
   */
  publisher: string;
  /**
   * The licence of the site's own text: an SPDX identifier.
   */
  licence: string;
  /**
   * The site's language, as a BCP 47 tag; en where absent.
   */
  language?: string;
  /**
   * The units shown first; metric where absent.
   */
  units?: 'metric' | 'us';
}
