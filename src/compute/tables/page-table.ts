import type { InBothUnits } from '../format/format-quantity.ts';

/** Text of a page; in both units where a quantity has two. */
export type Text = string | InBothUnits;

/** One cell: what is printed, and the anchor in the page where its working stands. */
export interface TableCell {
  text: Text;
  working?: string;
}

export interface TableColumn {
  heading: string;
  /** Said behind the heading, so that the cells are bare numbers. */
  unit?: Text;
  numeric: boolean;
}

/** A table of a page, ready to print. The first column heads the rows. */
export interface PageTable {
  caption: string;
  columns: readonly TableColumn[];
  rows: readonly { heading: Text; cells: readonly (Text | TableCell)[] }[];
  /** Sentences below the table, such as why a cell is empty. */
  notes: readonly string[];
}

/** Stands in a cell that has no number; the notes say why. */
export const noNumber = '\u2013';

/** Sentences, each once, in the order in which they first came up. */
export function distinct(sentences: readonly (string | undefined)[]): string[] {
  return [
    ...new Set(sentences.filter((sentence): sentence is string => sentence !== undefined && sentence !== '')),
  ];
}
