/** Sorts and filters the list of trials. Without this script the list is a plain table in full. */
const table = document.querySelector<HTMLTableElement>('#trials');
const controls = document.querySelector<HTMLElement>('.filters');
const told = document.querySelector<HTMLElement>('#trials-shown');

if (table && controls && told) run(table, controls, told);

function run(list: HTMLTableElement, filters: HTMLElement, status: HTMLElement): void {
  const body = list.tBodies[0]!;
  const rows = [...body.rows];
  const selects = [...filters.querySelectorAll('select')];

  for (const [column, heading] of [...list.tHead!.rows[0]!.cells].entries()) {
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
    rows.sort((a, b) => (upwards ? order(a, b) : order(b, a)));
    body.append(...rows);
    for (const other of list.tHead!.rows[0]!.cells) other.removeAttribute('aria-sort');
    heading.setAttribute('aria-sort', upwards ? 'ascending' : 'descending');
  }

  function filter(): void {
    let shown = 0;
    for (const row of rows) {
      const fits = selects.every(
        ({ name, value }) => value === '' || row.querySelector(`[data-key="${name}"]`)?.textContent === value,
      );
      row.hidden = !fits;
      if (fits) shown += 1;
    }
    status.textContent = `${shown} of ${rows.length} trials shown.`;
  }

  const asked = new URLSearchParams(location.search);
  for (const select of selects) {
    select.value = asked.get(select.name) ?? '';
    // A value that no trial has would leave the box empty and the list too.
    if (select.selectedIndex < 0) select.value = '';
    select.addEventListener('change', () => {
      filter();
      const chosen = new URLSearchParams(
        selects.filter(({ value }) => value).map(({ name, value }) => [name, value]),
      );
      history.replaceState(null, '', chosen.size > 0 ? `?${chosen}` : location.pathname);
    });
  }
  filters.hidden = false;
  filter();
}
