import { sortable } from './sortable.ts';

/** Sorts and filters the list of trials. Without this script the list is a plain table in full. */
const table = document.querySelector<HTMLTableElement>('#trials');
const controls = document.querySelector<HTMLElement>('.filters');
const told = document.querySelector<HTMLElement>('#trials-shown');

if (table && controls && told) run(table, controls, told);

function run(list: HTMLTableElement, filters: HTMLElement, status: HTMLElement): void {
  const rows = [...list.tBodies[0]!.rows];
  const selects = [...filters.querySelectorAll('select')];

  sortable(list);

  function filter(): void {
    let shown = 0;
    for (const row of rows) {
      const fits = selects.every(
        ({ name, value }) => value === '' || row.querySelector(`[data-key="${name}"]`)?.textContent === value,
      );
      row.hidden = !fits;
      if (fits) shown += 1;
    }
    const words = status.dataset['told'] ?? '';
    status.textContent = words.replace('{shown}', String(shown)).replace('{all}', String(rows.length));
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
