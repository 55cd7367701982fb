import type { VersionStep } from '../versions/version-steps.ts';
import { noNumber, type PageTable } from './page-table.ts';

/** The cells that a release changed; null where there are none. */
export function changedCellsTable({ changes, release, since }: VersionStep): PageTable | null {
  if (changes.length === 0 || since === null) return null;
  return {
    caption: `What ${release.version} changed since ${since}, weights in g`,
    columns: [
      { heading: 'Where', numeric: false },
      { heading: 'File', numeric: false },
      { heading: 'Column or key', numeric: false },
      { heading: `In ${since}`, numeric: false },
      { heading: `In ${release.version}`, numeric: false },
    ],
    rows: changes.map(({ file, row, column, before, after }) => ({
      heading: row,
      cells: [file, column, before ?? noNumber, after ?? noNumber],
    })),
    notes: [],
  };
}

/** The published figures that a release moved; null where there are none. */
export function movedFiguresTable({ figures, release, since }: VersionStep): PageTable | null {
  if (figures.length === 0 || since === null) return null;
  return {
    caption: `Which published figures ${release.version} moved`,
    columns: [
      { heading: 'Figure', numeric: false },
      { heading: `In ${since}`, numeric: false },
      { heading: `In ${release.version}`, numeric: false },
    ],
    rows: figures.map(({ figure, before, after }) => ({ heading: figure, cells: [before, after] })),
    notes: [],
  };
}
