/** How much is taken from another site, and how long it is waited for. */
export interface Limits {
  indexBytes: number;
  /** Of any other file. */
  fileBytes: number;
  /** Of all files of a site in one run. */
  siteBytes: number;
  /** For one answer, to its last byte. */
  milliseconds: number;
  /** For all of a site in one run. */
  siteMilliseconds: number;
}

/** A trial of 10,000 plants is about 1 MB, and an index about 8 kB for each trial. */
export const usualLimits: Limits = {
  indexBytes: 50_000_000,
  fileBytes: 20_000_000,
  siteBytes: 500_000_000,
  milliseconds: 30_000,
  siteMilliseconds: 900_000,
};
