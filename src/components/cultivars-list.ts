import { sortable } from './sortable.ts';

/** Sorts the list of cultivars. */
const table = document.querySelector<HTMLTableElement>('#cultivars');
if (table) sortable(table);
