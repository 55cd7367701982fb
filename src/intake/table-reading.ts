import type { Grid, GridCell } from './grid.ts';
import type { IntakeRule } from './intake-problem.ts';
import type { KnownTrial } from './known.ts';
import type { Mapping } from './mapping.ts';

/** A table as it is read, line by line. */
export interface TableReading {
  grid: Grid;
  mapping: Mapping;
  known: KnownTrial;
  /** Says what a cell was taken for. */
  use(cell: GridCell, what: string): void;
  fault(rule: IntakeRule, place: { row: number; column: number }, message: string, found?: string): void;
  /** By field: the last cell that said something, for fields that are carried down. */
  above: Map<number, GridCell>;
  /** Joined cells among the values that have been told of. */
  joined: Set<string>;
  /** By use: units that some cells say and a bare number may be in too. */
  unsureUnits: ReadonlyMap<string, string>;
  /** Names of the cells whose note was taken up. */
  notes: Set<string>;
  /** Lines that say the headings again. */
  headingsAgain: ReadonlySet<number>;
  /** The container of the last title, or of every row; `` for none. */
  container: string;
}

/** The cell of a field in a line; null where nothing is written there. */
export function cellAt({ grid }: TableReading, line: number, field: number): GridCell | null {
  const cell = grid.lines[line]?.[field] ?? null;
  return cell === null || cell.text === '' ? null : cell;
}
