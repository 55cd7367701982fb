import { say } from '../../model/say.ts';
import type { PlanKept } from '../planning/plan-kept.ts';
import type { VersionStep } from '../versions/version-steps.ts';
import { noNumber, type PageTable } from './page-table.ts';

/** The cells that a release changed; null where there are none. */
export function changedCellsTable({ changes, release, since }: VersionStep): PageTable | null {
  if (changes.length === 0 || since === null) return null;
  return {
    caption: say('What {version} changed since {since}, weights in g', { version: release.version, since }),
    columns: [
      { heading: say('Where'), numeric: false },
      { heading: say('File'), numeric: false },
      { heading: say('Column or key'), numeric: false },
      { heading: say('In {version}', { version: since }), numeric: false },
      { heading: say('In {version}', { version: release.version }), numeric: false },
    ],
    rows: changes.map(({ file, row, column, before, after }) => ({
      heading: row,
      cells: [file, column, before ?? noNumber, after ?? noNumber],
    })),
    notes: [],
  };
}

/** What was done otherwise than the plan said; null where it was kept to. */
export function planTable({ changes }: PlanKept): PageTable | null {
  if (changes.length === 0) return null;
  return {
    caption: say('What was done otherwise than planned'),
    columns: [
      { heading: say('Where'), numeric: false },
      { heading: say('Column or key'), numeric: false },
      { heading: say('Planned'), numeric: false },
      { heading: say('Done'), numeric: false },
    ],
    rows: changes.map(({ row, column, before, after }) => ({
      heading: row,
      cells: [column, before ?? noNumber, after ?? noNumber],
    })),
    notes: [],
  };
}

/** The published figures that a release moved; null where there are none. */
export function movedFiguresTable({ figures, release, since }: VersionStep): PageTable | null {
  if (figures.length === 0 || since === null) return null;
  return {
    caption: say('Which published figures {version} moved', { version: release.version }),
    columns: [
      { heading: say('Figure'), numeric: false },
      { heading: say('In {version}', { version: since }), numeric: false },
      { heading: say('In {version}', { version: release.version }), numeric: false },
    ],
    rows: figures.map(({ figure, before, after }) => ({ heading: figure, cells: [before, after] })),
    notes: [],
  };
}
