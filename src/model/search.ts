/** What the search finds: one entry for each page that it leads to. */

export type SearchKind = 'trial' | 'cultivar' | 'crop' | 'fact sheet';

export interface SearchRecord {
  kind: SearchKind;
  /** The address of the page under the site's own path. */
  path: string;
  title: string;
  /** When it was grown, in words; empty where that is not known. */
  season: string;
  /** What the page says first, with metric units and with US units. */
  sentence: { metric: string; us: string };
  /** All that can be found beside the title, in the order of its weight for a reader. */
  texts: readonly string[];
}
