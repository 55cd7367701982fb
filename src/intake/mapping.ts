/** What a cell of a row may say beside values. */
export const keys = ['container', 'row', 'column', 'plant', 'cut', 'date'] as const;
export type Key = (typeof keys)[number];

/** How a place stands in one cell. */
export const placeForms = [
  'row-column',
  'container-row-column',
  'letter row, number column',
  'letter column, number row',
  'numbered along rows',
  'numbered along columns',
] as const;
export type PlaceForm = (typeof placeForms)[number];

/** Uses of a column that are neither a key nor a value nor a factor. */
export const otherUses = [
  'place',
  'status',
  'remark',
  'pot_total',
  'block',
  'plot',
  'plants',
  'nothing',
] as const;

/** What a column of a grower's table is taken for. */
export interface ColumnUse {
  /** A key, one of the other uses, or the id of a variable or factor of the trial. */
  is: string;
  /** How a place is written; only for `place`. */
  as?: PlaceForm;
  /** The unit that the values are in; only for variables and pot_total. */
  unit?: string;
  /** What the heading says of every value beneath it, such as the plant or the cut. */
  at?: Partial<Record<Key, string>>;
  /** True where a cell left empty means what the one above it says. */
  isCarried?: boolean;
}

/**
 * How one table of a spreadsheet is read. Fields are the columns of the sheet and lines its rows; in a turned
 * table, in which each plant has a column, fields are its rows and lines its columns. Both count from 0.
 */
export interface Mapping {
  sheet: string;
  isTurned: boolean;
  /** First and last line of the headings. */
  headings: readonly [number, number];
  /** First and last line of the data. */
  lines: readonly [number, number];
  /** Lines in between that are no data, such as totals. */
  leftOut: readonly number[];
  /** By field. */
  uses: ReadonlyMap<number, ColumnUse>;
  /** What is so of every row, where no column says it. */
  always: Readonly<Partial<Record<Key, string>>>;
  /** True where a line with a container's name alone gives the container of the lines beneath. */
  hasTitles: boolean;
  /** Words in columns of values to a status, or to `blank`. */
  words: Readonly<Record<string, string>>;
  /** Null where a comma or point could part thousands as well, and nobody has said. */
  decimal: '.' | ',' | null;
  /** How a date in digits is read; null where it does not say itself and has not been asked. */
  dates: 'day first' | 'month first' | null;
}
