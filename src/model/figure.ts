/** A figure's table twin: every number that the figure shows. */
export interface FigureTable {
  caption: string;
  columns: readonly { heading: string; numeric: boolean }[];
  /** Cells as printed; the first of each row heads it. */
  rows: readonly (readonly string[])[];
}

/** A drawn figure: SVG text with its title and description inside, and its table twin. */
export interface Figure {
  /** Unique in its page; ids inside the SVG begin with it. */
  id: string;
  title: string;
  /** Pieces in their order; a quantity is in both units, so that a page can show either. */
  description: readonly (string | { metric: string; us: string | null })[];
  /** `<svg role="img">...</svg>`, holding title and desc. */
  svg: string;
  table: FigureTable;
}
