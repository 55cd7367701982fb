import { say } from '../../../model/say.ts';
import type { Findings, Inference } from '../../../model/findings.ts';
import type { Trial } from '../../../model/trial.ts';
import { formatNumber } from '../../format/format-number.ts';
import { unitName } from '../../format/unit-name.ts';
import { distinct, type PageTable } from '../page-table.ts';
import { orNothing } from '../treatment-summary.ts';
import { bareP } from './bare-p.ts';
import { termName } from './names-of.ts';

/** Degrees of freedom: whole as they are, fractional to one decimal. */
export function formatDf(df: number): string {
  return formatNumber(df, Math.abs(df - Math.round(df)) < 1e-6 ? 0 : 1);
}

/** The analysis of variance, each term beside the error that it is tested against. */
export function anovaTable(trial: Trial, findings: Findings, inference: Inference): PageTable {
  const square = unitName(findings.variable.unit);
  const unit = square === '' ? {} : { unit: `${square}²` };
  return {
    caption: say('Analysis of variance, each term beside the error that it is held against'),
    columns: [
      { heading: say('Term'), numeric: false },
      { heading: say('df'), numeric: true },
      { heading: say('Sum of squares'), ...unit, numeric: true },
      { heading: say('Mean square'), ...unit, numeric: true },
      { heading: say('Error'), numeric: false },
      { heading: say('Error df'), numeric: true },
      { heading: 'F', numeric: true },
      { heading: 'p', numeric: true },
    ],
    rows: inference.anova.map((row) => ({
      heading:
        row.term === 'residual'
          ? say(`Residual, between ${row.error ?? 'unit'}s`)
          : termName(trial, row.term),
      cells: [
        orNothing(row.df, formatDf),
        orNothing(row.sum_of_squares, (value) => formatNumber(value, 1)),
        orNothing(row.mean_square, (value) => formatNumber(value, 1)),
        row.f === null || row.error === null ? '' : say(row.error),
        row.error_df === null ? '' : formatDf(row.error_df),
        row.f === null ? '' : formatNumber(row.f, 2),
        row.p === null ? '' : bareP(row.p, inference.alpha),
      ],
    })),
    notes: distinct(inference.anova.map(({ reason }) => reason)),
  };
}
