import { expect, test } from 'vitest';
import type { PageTable } from '../../../src/compute/tables/page-table.ts';
import { sharedNotes } from '../../../src/compute/tables/shared-notes.ts';

const table = (...notes: string[]): PageTable => ({ caption: '', columns: [], rows: [], notes });

test('a note of every table is said once, and one of some stays with those', () => {
  const { tables, shared } = sharedNotes([table('not replicates', 'unknown'), table('unknown')]);
  expect(shared).toEqual(['unknown']);
  expect(tables.map(({ notes }) => notes)).toEqual([['not replicates'], []]);
});

test('a table that stands alone keeps its notes', () => {
  expect(sharedNotes([table('unknown')])).toEqual({ tables: [table('unknown')], shared: [] });
});
