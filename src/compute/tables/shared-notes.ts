import { distinct, type PageTable } from './page-table.ts';

/**
 * Tables with what is said below all of them taken out, to be said once after the last. A note that belongs to
 * some of them only stays where it belongs, so that none seems to be meant that is not.
 */
export function sharedNotes(tables: readonly PageTable[]): { tables: PageTable[]; shared: string[] } {
  if (tables.length < 2) return { tables: [...tables], shared: [] };
  const shared = distinct(tables.flatMap(({ notes }) => notes)).filter((note) =>
    tables.every(({ notes }) => notes.includes(note)),
  );
  return {
    tables: tables.map((table) => ({
      ...table,
      notes: table.notes.filter((note) => !shared.includes(note)),
    })),
    shared,
  };
}
