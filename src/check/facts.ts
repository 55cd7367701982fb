import type { Cultivar } from '../model/library.ts';
import type { HarvestRecord, Position, Reading, TrialMetadata } from '../model/trial.ts';
import type { FolderFiles } from '../read/folder-files.ts';
import type { Place } from '../read/place.ts';
import type { Path } from '../read/yaml.ts';
import type { Grid } from './grid.ts';
import type { Table } from './table.ts';

/** trial.yaml as far as it is sound: every value that a schema refuses is left out. */
export interface Metadata {
  draft: Partial<TrialMetadata>;
  /** Keys of the top level of which a needed part was refused, so that nothing must be concluded from them. */
  lost: ReadonlySet<string>;
  place(path: Path): Place;
  keyPlace(path: Path): Place;
}

/** The rows of layout.csv, one for each position, or the grid where there is no layout.csv. */
export interface Layout {
  table: Table | null;
  positions: readonly Position[];
  /** Offset in layout.csv at which each position's row begins; empty where there is no layout.csv. */
  starts: readonly number[];
  grid: Grid;
  /** False where a row could not be made a position, so that absence proves nothing. */
  complete: boolean;
  /** True where it is complete and every treatment is a known one, so that the design can be read off it. */
  treated: boolean;
}

/** The rows of harvest.csv. */
export interface Harvest {
  table: Table;
  records: readonly HarvestRecord[];
  /** Index in the layout's positions of each record's position. */
  positionOf: readonly number[];
  /** Offset in the text at which each record's row begins. */
  starts: readonly number[];
  /** Containers some of whose rows could not be placed, so that absence proves nothing. */
  unsure: ReadonlySet<string>;
  /** How many rows could not be placed: as many plants may seem to have none. */
  unplaced: number;
  /** Containers with a weight, a status or a cut that is reported as an error, so that their sum proves nothing. */
  doubted: ReadonlySet<string>;
  /** False where rows were lost to faults of the file's form. */
  complete: boolean;
}

/** The rows of readings.csv. */
export interface Readings {
  table: Table;
  rows: readonly Reading[];
  /** Offset in the text at which each row begins. */
  starts: readonly number[];
  /** Containers of which a date or a number could not be read, so that nothing follows from what is absent. */
  doubted: ReadonlySet<string>;
}

/** Everything that is known of a trial while it is checked; null where a file is absent or unreadable. */
export interface Facts {
  id: string;
  files: FolderFiles;
  /** Null where no cultivars.yaml is at hand. */
  cultivars: readonly Cultivar[] | null;
  /** Year-month-day. */
  today: string;
  metadata: Metadata;
  layout: Layout | null;
  harvest: Harvest | null;
  readings: Readings | null;
}
