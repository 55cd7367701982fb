import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import { formatNumber } from '../format/format-number.ts';
import { formatPercent } from '../format/format-percent.ts';
import { distinct, type PageTable } from './page-table.ts';
import { orNothing } from './treatment-summary.ts';

/** Replicates needed to tell a given difference, a column for each power; null where nothing can be said. */
export function nextTrialTable({ next_trial: cases }: Findings): PageTable | null {
  const [first] = cases;
  if (first === undefined) return null;
  const powers = [...new Set(cases.map(({ power }) => power))];
  const differences = [...new Set(cases.map((each) => each.difference_percent))];
  const cv = first.cv_used === null ? '' : ` (${say('CV')} ${formatPercent(first.cv_used, 1)})`;
  return {
    caption: say('Replicates of each treatment that the next trial needs, from {from}', {
      from: first.from + cv,
    }),
    columns: [
      { heading: say('To tell a difference of'), unit: say('% of the mean'), numeric: false },
      ...powers.map((power) => ({
        heading: say('with {power} power', { power: formatPercent(power * 100, 0) }),
        numeric: true,
      })),
    ],
    rows: differences.map((difference) => ({
      heading: formatNumber(difference, 0),
      cells: powers.map((power) => {
        const found = cases.find((each) => each.difference_percent === difference && each.power === power);
        return orNothing(found?.replicates_needed ?? null, (needed) => formatNumber(needed, 0));
      }),
    })),
    notes: distinct(cases.map(({ reason }) => reason)),
  };
}
