/** What a cell of a spreadsheet holds. */
export interface WorkbookCell {
  /** Its value as text: digits with a point for a number, year-month-day for a date. */
  text: string;
  kind: 'number' | 'text' | 'date' | 'truth' | 'fault';
  /** As the spreadsheet shows it, where that says more, such as `182 g`; null where it does not. */
  shown: string | null;
  isFormula: boolean;
  /** A note fastened to it; null for none. */
  note: string | null;
}

/** Cells that are joined; all from 0, the last ones included. */
export interface Merged {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** One sheet; rows and columns from 0, null where a cell is empty. */
export interface Sheet {
  name: string;
  rows: readonly (readonly (WorkbookCell | null)[])[];
  merged: readonly Merged[];
  /** What the spreadsheet does not show: rows and columns from 0, or the whole sheet. */
  hidden: { rows: readonly number[]; columns: readonly number[]; isWhole: boolean };
}

/** A spreadsheet file as read. */
export interface Workbook {
  sheets: readonly Sheet[];
  /** True for CSV: its one sheet has no name of its own, and its rows are the file's lines. */
  isText: boolean;
  /** In what its text was written, where that is not UTF-8; null where it is. */
  encoding: string | null;
  /** Texts that lie hidden under joined cells where the file does not let their place be told. */
  covered: readonly string[];
}
