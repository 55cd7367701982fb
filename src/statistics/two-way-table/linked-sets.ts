/** Rows and columns of a table that a chain of filled cells connects. */
export interface LinkedSet {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}

/**
 * The linked sets of a two-way table with holes: two rows belong to one set where a chain of shared columns
 * leads from one to the other. Only rows of one set can be compared, whatever the model. Sets are listed by
 * their first row; rows and columns without a cell belong to none.
 *
 * Reference: Weeks & Williams (1964) Technometrics 6, 319-324.
 *
 * @example linkedSets([{row: 0, column: 0}, {row: 1, column: 0}, {row: 2, column: 1}])
 *   // [{rows: [0, 1], columns: [0]}, {rows: [2], columns: [1]}]
 */
export function linkedSets(cells: readonly { readonly row: number; readonly column: number }[]): LinkedSet[] {
  const columnsOfRow = gather(cells, 'row', 'column');
  const rowsOfColumn = gather(cells, 'column', 'row');
  const seenRows = new Set<number>();
  const seenColumns = new Set<number>();
  const sets: LinkedSet[] = [];
  for (const start of [...columnsOfRow.keys()].sort((a, b) => a - b)) {
    if (seenRows.has(start)) continue;
    const rows = [start];
    const columns: number[] = [];
    seenRows.add(start);
    for (const row of rows) {
      for (const column of columnsOfRow.get(row) ?? []) {
        if (seenColumns.has(column)) continue;
        seenColumns.add(column);
        columns.push(column);
        for (const next of rowsOfColumn.get(column) ?? []) {
          if (seenRows.has(next)) continue;
          seenRows.add(next);
          rows.push(next);
        }
      }
    }
    sets.push({ rows: rows.sort((a, b) => a - b), columns: columns.sort((a, b) => a - b) });
  }
  return sets;
}

function gather(
  cells: readonly { readonly row: number; readonly column: number }[],
  by: 'row' | 'column',
  what: 'row' | 'column',
): Map<number, number[]> {
  const lists = new Map<number, number[]>();
  for (const cell of cells) {
    const list = lists.get(cell[by]);
    if (list) list.push(cell[what]);
    else lists.set(cell[by], [cell[what]]);
  }
  return lists;
}
