import type { LotPlace } from './lot-place.ts';

/** A container as lots are drawn for it. */
export interface LotGrid {
  id: string;
  rows: number;
  columns: number;
  block?: string;
}

export interface SetOut {
  /** Positions of a plot, where plots and not positions are allotted. */
  plot?: { rows: number; columns: number };
  /** So many positions along each edge are planted as a border and take no part; 0 where absent. */
  border?: number;
}

/**
 * The places that lots are drawn for: every position inside the border, in plots side by side where plots are wanted,
 * named after the container and numbered row by row. Gives the reason where the grid does not hold whole plots.
 */
export function setOut(
  grids: readonly LotGrid[],
  { plot, border = 0 }: SetOut = {},
): { places: LotPlace[] } | { reason: string } {
  const places: LotPlace[] = [];
  for (const { id, rows, columns, block = null } of grids) {
    const [inner, across] = [rows - 2 * border, columns - 2 * border];
    if (inner < 1 || across < 1)
      return {
        reason: `a border of ${border} leaves nothing of the ${rows} by ${columns} positions of ${id}`,
      };
    if (plot && (inner % plot.rows !== 0 || across % plot.columns !== 0)) {
      return {
        reason: `plots of ${plot.rows} by ${plot.columns} do not fill the ${inner} by ${across} positions of ${id}`,
      };
    }
    for (let row = 0; row < inner; row += 1) {
      for (let column = 0; column < across; column += 1) {
        const at = { container: id, row: row + border + 1, column: column + border + 1, block };
        places.push({ ...at, plot: plot ? `${id}-${plotNumber(row, column, across, plot)}` : null });
      }
    }
  }
  return { places };
}

function plotNumber(
  row: number,
  column: number,
  across: number,
  plot: { rows: number; columns: number },
): number {
  return Math.floor(row / plot.rows) * (across / plot.columns) + Math.floor(column / plot.columns) + 1;
}
