/** The record of a file that was gathered from another site. */
export interface GatheredFile {
  name: string;
  /** Where it was fetched. */
  address: string;
  bytes: number;
  /** In hexadecimal, as that site publishes it and as it was verified. */
  sha256: string;
  /** What that site gave to ask by whether it changed; null where it gave none. */
  etag: string | null;
  last_modified: string | null;
}

/** The record that stands as gathered.json beside the files of a trial from another site. */
export interface GatheredRecord {
  form: 1;
  site: { title: string; address: string };
  /** The trial's id on that site. */
  id: string;
  version: string;
  /** The trial's page and its data page there. */
  page: string;
  data: string;
  /** Its DOI as an address where it has one, else its data page. */
  identifier: string;
  /** When this version was fetched: ISO 8601, UTC. */
  gathered: string;
  files: readonly GatheredFile[];
}

/** Where a trial of another site came from. */
export interface Origin {
  /** The folder of its site under gathered/. */
  folder: string;
  /** What its site is called here, and where it stands. */
  title: string;
  address: string;
  id: string;
  page: string;
  data: string;
  identifier: string;
  /** The day on which this version was fetched. */
  gathered: string;
}

/** The files of a trial's dataset that the check and the findings need, by which a copy is the same or another. */
export const gatheredFiles = ['trial.json', 'harvest.csv', 'layout.csv', 'readings.csv'] as const;
