import type { Status } from '../model/trial.ts';
import type { Place, Walk } from './place.ts';

/** What was found of a plant, or of a pot weighed whole. */
export interface WeighedEntry {
  kind: 'weighed';
  place: Place;
  cut: number;
  /** Year-month-day. */
  date: string;
  status: Status;
  /** By the variable's id: the digits as they were typed, in the unit of harvest.csv. */
  values: Readonly<Record<string, string>>;
  remark: string;
  /** What was asked about the values, and kept. */
  kept: readonly string[];
}

/** A second weighing of a place. */
export interface SecondEntry {
  kind: 'second';
  place: Place;
  cut: number;
  value: string;
}

/** An independent total of what was cut of a container; an empty value takes it back. */
export interface TotalEntry {
  kind: 'total';
  container: string;
  cut: number;
  value: string;
}

/** A row of readings.csv. */
export interface ReadingEntry {
  kind: 'reading';
  container: string;
  date: string;
  values: Readonly<Record<string, string>>;
  remark: string;
}

/** An event, for trial.yaml. */
export interface EventEntry {
  kind: 'event';
  date: string;
  where: string;
  what: string;
}

/** Places that were passed over and are to be called not weighed. */
export interface LeftEntry {
  kind: 'left';
  cut: number;
  date: string;
  places: readonly Place[];
}

/** Which cut is weighed, and on which day. */
export interface CutEntry {
  kind: 'cut';
  cut: number;
  date: string;
}

/** How the containers are walked. */
export interface WalkEntry extends Walk {
  kind: 'walk';
}

/** An earlier entry taken back. */
export interface UndoneEntry {
  kind: 'undone';
  of: number;
}

export type Entry =
  | WeighedEntry
  | SecondEntry
  | TotalEntry
  | ReadingEntry
  | EventEntry
  | LeftEntry
  | CutEntry
  | WalkEntry
  | UndoneEntry;

/** An entry as it is kept: nothing that was kept is ever changed, and what is taken back is so by a later entry. */
export interface KeptEntry {
  /** Rises from entry to entry. */
  number: number;
  /** The moment of the entry, ISO 8601. */
  at: string;
  entry: Entry;
}

/** The entries that stand: those taken back are left out, and so is the taking back. */
export function standing(journal: readonly KeptEntry[]): KeptEntry[] {
  const undone = new Set(journal.flatMap(({ entry }) => (entry.kind === 'undone' ? [entry.of] : [])));
  return journal.filter(({ number, entry }) => entry.kind !== 'undone' && !undone.has(number));
}

/** The last entry that can be taken back; null where none is left. */
export function lastToUndo(journal: readonly KeptEntry[]): KeptEntry | null {
  return standing(journal).findLast(({ entry }) => entry.kind !== 'cut' && entry.kind !== 'walk') ?? null;
}
