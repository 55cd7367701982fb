import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { arePotsWeighedWhole } from '../counts.ts';
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

/** What became of the plants, or of pots weighed whole: those set and weighed, and of the rest what occurred. */
export function statusCountsTable(trial: Trial, counts: Findings['counts']): PageTable {
  const ofPots = arePotsWeighedWhole(trial);
  return {
    caption: ofPots
      ? say('What became of the pots, each weighed whole and counted once by the worst of its cuts')
      : say('What became of the plants, each counted once by the worst of its cuts'),
    columns: [
      { heading: say('Status'), numeric: false },
      { heading: ofPots ? say('Pots') : say('Plants'), numeric: true },
    ],
    rows: statuses
      .filter(([key]) => key === 'set' || key === 'weighed' || counts[key] > 0)
      .map(([key, name]) => ({ heading: say(name), cells: [formatNumber(counts[key], 0)] })),
    notes: [],
  };
}
