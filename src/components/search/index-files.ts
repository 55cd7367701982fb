/** What the search page uses of the index's own script. */
export interface SearchScript {
  search(words: string): Promise<{ results: readonly { data(): Promise<FoundPage> }[] }>;
}

/** A page that was found. */
export interface FoundPage {
  /** Its address on this host. */
  url: string;
  /** The words around those that were found, which stand between mark elements; all else in it is escaped. */
  excerpt: string;
  meta: Partial<Record<'title' | 'kind' | 'season' | 'metric' | 'us', string>>;
}

/** Loads the script that reads the index. It lies beside the site's files and is no part of the bundle. */
export async function loadSearch(address: string): Promise<SearchScript> {
  return (await import(/* @vite-ignore */ address)) as SearchScript;
}
