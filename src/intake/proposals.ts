import { say } from '../model/say.ts';
import type { Sheet, Workbook } from '../model/workbook.ts';
import { gridOf } from './grid.ts';
import type { KnownTrial } from './known.ts';
import { fillIn, proposeMapping, type Proposal } from './propose-mapping.ts';
import { mappingOfEntry, type SourceEntry } from './source-entry.ts';

/** How each sheet that has a table could be read: as trial.yaml remembers it, else as its headings say. */
export function proposals(
  { sheets }: Workbook,
  known: KnownTrial,
  remembered: readonly SourceEntry[] = [],
): Proposal[] {
  return sheets.flatMap((sheet) => {
    const entry = remembered.find((one) => (one.sheet ?? '') === sheet.name);
    const again = entry === undefined ? null : readAgain(sheet, entry, known);
    return again ?? proposeMapping(sheet, known) ?? [];
  });
}

/** A remembered reading, with as many rows as the table has now; null where its headings are gone. */
function readAgain(sheet: Sheet, entry: SourceEntry, known: KnownTrial): Proposal | null {
  const before = mappingOfEntry(entry);
  if (before === null) return null;
  const grid = gridOf(sheet, before.isTurned);
  const [first, last] = before.headings;
  const hasHeading = (field: number): boolean =>
    Array.from({ length: last - first + 1 }, (_, index) => grid.lines[first + index]?.[field]).some(Boolean);
  if (![...before.uses.keys()].every(hasHeading)) return null;
  const now = fillIn(sheet, grid, { first, last, uses: new Map(before.uses), score: 0 }, known);
  if (now === null) return null;
  const { lines, leftOut, hasTitles, decimal, dates } = now.mapping;
  return {
    mapping: {
      ...before,
      lines,
      leftOut: [...new Set([...before.leftOut, ...leftOut])].sort((a, b) => a - b),
      hasTitles: before.hasTitles || hasTitles,
      decimal: entry.decimal ?? decimal,
      dates: entry.dates ?? dates,
    },
    guesses: [say('Read as trial.yaml remembers it.')],
  };
}
