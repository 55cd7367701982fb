/** What a file of this folder exports as `bench`, to be run by `npm run bench`. */

/** One line of the printed table: the column's name to its value. */
export type BenchRow = Record<string, string | number>;

export interface BenchResult {
  rows: BenchRow[];
  /** The targets that were missed, each in a sentence; any makes the command end with 1. */
  misses?: string[];
}

export interface Bench {
  /** What is measured, against what. */
  name: string;
  /** With `quick`, small sizes only. */
  run(options: { quick: boolean }): Promise<BenchResult>;
}
