/** Makes buttons of a table's headings that sort its rows by their cells' `data-sort`. Without it the table is as printed. */
export function sortable(table: HTMLTableElement): void {
  const body = table.tBodies[0]!;
  const headings = [...table.tHead!.rows[0]!.cells];
  for (const [column, heading] of headings.entries()) {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = heading.textContent;
    heading.replaceChildren(button);
    button.addEventListener('click', () => sortBy(column, heading));
  }

  function sortBy(column: number, heading: HTMLTableCellElement): void {
    const upwards = heading.getAttribute('aria-sort') !== 'ascending';
    const numeric = 'numeric' in heading.dataset;
    const key = (row: HTMLTableRowElement) => row.cells[column]?.dataset['sort'] ?? '';
    const order = (a: HTMLTableRowElement, b: HTMLTableRowElement) =>
      numeric ? Number(key(a)) - Number(key(b)) : key(a).localeCompare(key(b));
    body.append(...[...body.rows].sort((a, b) => (upwards ? order(a, b) : order(b, a))));
    for (const other of headings) other.removeAttribute('aria-sort');
    heading.setAttribute('aria-sort', upwards ? 'ascending' : 'descending');
  }
}
