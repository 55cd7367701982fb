import { say } from '../../../model/say.ts';
import type { Findings, Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import { formatNumber } from '../../format/format-number.ts';
import { formatBare } from '../../format/format-quantity.ts';
import { type LevelNames, treatmentName } from '../../format/level-names.ts';
import { unitInBoth } from '../../format/unit-in-both.ts';
import { distinct, noNumber, type PageTable } from '../page-table.ts';
import { digitsFor, joined, orNothing, toWord } from '../treatment-summary.ts';

/** Means of the analysis on another scale, brought back; null where there was no need of one. */
export function transformedTable(
  trial: Trial,
  findings: Findings,
  names: LevelNames,
  inference: Inference,
): PageTable | null {
  const { transformed } = inference;
  if (!transformed) return null;
  const { unit } = findings.variable;
  const digits = digitsFor(
    trial,
    findings.treatments.flatMap((each) => each[inference.measure] ?? []),
  );
  const both = unitInBoth(unit);
  return {
    caption:
      `${say('Spread grows with the mean, so the analysis was done again on the {scale}.', { scale: say(transformed.scale) })} ` +
      (transformed.conclusion_changes
        ? say('The conclusion changes: rely on neither without more replicates.')
        : say('The conclusion does not change.')),
    columns: [
      { heading: say('Treatment'), numeric: false },
      { heading: say('Back-transformed mean'), unit: both, numeric: true },
      { heading: say('95% limits'), unit: both, numeric: true },
    ],
    rows: transformed.means.map(({ treatment, mean, lower, upper }) => ({
      heading: treatmentName(trial, treatment, names),
      cells: [
        orNothing(mean, (value) => formatBare(value, unit, digits)),
        lower === null || upper === null
          ? noNumber
          : joined(formatBare(lower, unit, digits), toWord(), formatBare(upper, unit, digits)),
      ],
    })),
    notes: [],
  };
}

/** Medians, for scores and counts; null elsewhere. */
export function mediansTable(
  trial: Trial,
  names: LevelNames,
  { rank_test: ranks }: Inference,
): PageTable | null {
  if (!ranks) return null;
  return {
    caption: say('Medians, set beside one another by {method}', { method: ranks.method }),
    columns: [
      { heading: say('Treatment'), numeric: false },
      { heading: 'n', numeric: true },
      { heading: say('Median'), numeric: true },
    ],
    rows: ranks.medians.map(({ treatment, median, n }) => ({
      heading: treatmentName(trial, treatment, names),
      cells: [formatNumber(n, 0), orNothing(median, (value) => formatNumber(value, 1))],
    })),
    notes: distinct([ranks.reason]),
  };
}

/** What fewer or more plants weighed in each unit would make of the variance of a mean; null where unknown. */
export function plantsPerUnitTable({ plants_per_unit: worth }: Inference): PageTable | null {
  if (!worth || worth.gain.length === 0) return null;
  return {
    caption: say(
      'How many plants of each unit are worth weighing: variance of a treatment’s mean, in percent of that with the {weighed} weighed in this trial',
      { weighed: formatNumber(worth.weighed, Number.isInteger(worth.weighed) ? 0 : 1) },
    ),
    columns: [
      { heading: say('Plants of each unit'), numeric: false },
      { heading: say('Variance of the mean'), unit: '%', numeric: true },
    ],
    rows: worth.gain.map(({ plants, variance_percent: percent }) => ({
      heading: formatNumber(plants, 0),
      cells: [formatNumber(percent, 0)],
    })),
    notes: distinct([worth.reason]),
  };
}
