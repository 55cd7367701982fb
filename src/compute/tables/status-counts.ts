import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import { formatNumber } from '../format/format-number.ts';
import type { PageTable } from './page-table.ts';

const statuses: readonly [keyof Findings['counts'], string][] = [
  ['set', 'Set'],
  ['weighed', 'Weighed at every cut'],
  ['not_weighed', 'Not weighed'],
  ['dead', 'Dead'],
  ['no_regrowth', 'No regrowth'],
  ['culled', 'Culled'],
  ['not_planted', 'Not planted'],
];

/** What became of the plants: those set and weighed, and of the rest what occurred. */
export function statusCountsTable(counts: Findings['counts']): PageTable {
  return {
    caption: say('What became of the plants, each counted once by the worst of its cuts'),
    columns: [
      { heading: say('Status'), numeric: false },
      { heading: say('Plants'), numeric: true },
    ],
    rows: statuses
      .filter(([key]) => key === 'set' || key === 'weighed' || counts[key] > 0)
      .map(([key, name]) => ({ heading: say(name), cells: [formatNumber(counts[key], 0)] })),
    notes: [],
  };
}
