import { say } from '../model/say.ts';
import type { Container } from '../model/trial.ts';

/** Finds the index of a position by container, row and column without searching. */
export interface Grid {
  containers: ReadonlyMap<string, Container>;
  /** Index in `positions`, or -1. */
  indexOf(container: string, row: number, column: number): number;
  /** Notes the index of a position; the answer is the index that stood there, or -1. */
  put(container: string, row: number, column: number, index: number): number;
}

/** An empty grid for the given containers. */
export function emptyGrid(containers: readonly Container[]): Grid {
  const byId = new Map(containers.map((container) => [container.id, container]));
  const cells = new Map<string, Int32Array>();
  for (const { id, rows, columns } of byId.values()) cells.set(id, new Int32Array(rows * columns));
  const place = (container: string, row: number, column: number): [Int32Array, number] | null => {
    const found = byId.get(container);
    const indexes = cells.get(container);
    if (!found || !indexes || row < 1 || column < 1 || row > found.rows || column > found.columns)
      return null;
    return [indexes, (row - 1) * found.columns + column - 1];
  };
  return {
    containers: byId,
    indexOf: (container, row, column) => {
      const at = place(container, row, column);
      return at === null ? -1 : (at[0][at[1]] ?? 0) - 1;
    },
    put: (container, row, column, index) => {
      const at = place(container, row, column);
      if (at === null) return -1;
      const before = (at[0][at[1]] ?? 0) - 1;
      if (before < 0) at[0][at[1]] = index + 1;
      return before;
    },
  };
}

/** `T1 2 3`: container, row and column, as `accepted.where` writes it. */
export function whereOf(at: { container: string; row: number; column: number }): string {
  return `${at.container} ${String(at.row)} ${String(at.column)}`;
}

/** `T1 row 2 column 3`, for messages. */
export function positionInWords(at: { container: string; row: number; column: number }): string {
  const { container, row, column } = at;
  return say('{container} row {row} column {column}', { container, row, column });
}
