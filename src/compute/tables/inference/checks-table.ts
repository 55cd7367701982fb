import { say } from '../../../model/say.ts';
import type { Inference } from '../../../model/findings.ts';
import { formatNumber } from '../../format/format-number.ts';
import { distinct, noNumber, type PageTable } from '../page-table.ts';
import { formatDf } from './anova-table.ts';
import { bareP } from './bare-p.ts';

/** Whether the analysis may be relied on: its checks, and the randomisation test beside it. Null where there are none. */
export function checksTable({
  checks,
  randomisation_test: lots,
  rank_test: ranks,
  alpha,
}: Inference): PageTable | null {
  const p = (value: number | null) => (value === null ? noNumber : bareP(value, alpha));
  const rows: { heading: string; cells: string[] }[] = [];
  const normal = checks?.shapiro_wilk;
  if (normal)
    rows.push({
      heading: say('Shapiro–Wilk'),
      cells: [
        say('Are the residuals of the units as good as normal?'),
        normal.w === null ? noNumber : `W = ${formatNumber(normal.w, 3)}`,
        p(normal.p),
      ],
    });
  const spread = checks?.brown_forsythe;
  if (spread) {
    const df = [spread.df1, spread.df2]
      .map((each) => (each === null ? noNumber : formatDf(each)))
      .join(` ${say('and')} `);
    const f = spread.f === null ? noNumber : say('F = {f} on {df} df', { f: formatNumber(spread.f, 2), df });
    rows.push({
      heading: say('Brown–Forsythe'),
      cells: [say('Is the spread alike in every treatment?'), f, p(spread.p)],
    });
  }
  if (lots) {
    const count = formatNumber(lots.arrangements, 0);
    const value = lots.exact
      ? say('all {count} arrangements counted', { count })
      : say('{count} arrangements drawn, seed {seed}', { count, seed: lots.seed ?? '' });
    rows.push({
      heading: say('Randomisation test'),
      cells: [
        say('How often would the lot alone do as much? ({statistic})', { statistic: lots.statistic }),
        value,
        p(lots.p),
      ],
    });
  }
  if (ranks) {
    const value = ranks.statistic === null ? noNumber : `χ² = ${formatNumber(ranks.statistic, 2)}`;
    rows.push({
      heading: ranks.method,
      cells: [say('Do the treatments differ in rank?'), value, p(ranks.p)],
    });
  }
  if (rows.length === 0) return null;
  return {
    caption: say('Checks of the analysis'),
    columns: [
      { heading: say('Check'), numeric: false },
      { heading: say('What it asks'), numeric: false },
      { heading: say('Result'), numeric: false },
      { heading: 'p', numeric: true },
    ],
    rows,
    notes: distinct([normal?.reason, spread?.reason, lots?.reason, lots?.note, ranks?.reason]),
  };
}
