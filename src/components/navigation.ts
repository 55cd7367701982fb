/** The pages that the header leads to, in order; `path` is the address under the site's own path. */
export const navigation: readonly { label: string; path: string }[] = [
  { label: 'Trials', path: 'trials/' },
  { label: 'Cultivars', path: 'cultivars/' },
  { label: 'Compare', path: 'compare/' },
  { label: 'Fact sheets', path: 'fact-sheets/' },
  { label: 'Solution', path: 'solution/' },
  { label: 'Data', path: 'data/' },
  { label: 'Methods', path: 'methods/' },
  { label: 'Search', path: 'search/' },
];

/** One step of the way to a page; the page itself has no path. */
export interface Step {
  label: string;
  path?: string;
}
