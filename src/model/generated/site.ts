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
  /**
   * Other sites of this program whose trials are compared with this site's own; `tankside gather` fetches them.
   *
   * @maxItems 50
   */
  gather?: {
    /**
     * What the site is called here, beside each trial gathered from it.
     */
    title: string;
    /**
     * Where the site stands: the address of its home page.
     */
    address: string;
  }[];
  /**
   * The publisher's own disclaimer, printed as it stands below the cautions of trials, fact sheets and mixing cards. Nothing is printed where it is absent.
   */
  disclaimer?: string;
  /**
   * The publisher's own statement of equal opportunity, printed as it stands below the disclaimer. Nothing is printed where it is absent.
   */
  equal_opportunity?: string;
}
