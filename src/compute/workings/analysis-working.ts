import { say } from '../../model/say.ts';
import type { Findings, Inference } from '../../model/findings.ts';
import type { Trial } from '../../model/trial.ts';
import { formatNumber } from '../format/format-number.ts';
import { unitInBoth } from '../format/unit-in-both.ts';
import { formatBare } from '../format/format-quantity.ts';
import { termName } from '../tables/inference/names-of.ts';
import { digitsFor } from '../tables/treatment-summary.ts';
import type { PageTable } from '../tables/page-table.ts';

/** The anchor of an analysis's working, by the analysis's place on the page. */
export function analysisWorkingId(place: number): string {
  return `working-analysis-${place}`;
}

/** The units that an analysis compares, with what each weighed, and its formulas with their numbers put in. */
export function analysisWorking(
  trial: Trial,
  findings: Findings,
  inference: Inference,
): { units: PageTable; steps: { name: string; formula: string }[] } {
  const { unit } = findings.variable;
  const digits = Math.max(
    0,
    digitsFor(
      trial,
      findings.treatments.flatMap((each) => each[inference.measure] ?? []),
    ),
  );
  const bare = (value: number, plus = false) => formatBare(value, unit, digits + 1, { plus });
  const both = unitInBoth(unit);
  return {
    units: {
      caption: say(
        'Each experimental unit: the mean of what was weighed in it, what the model makes of it, and what is left',
      ),
      columns: [
        { heading: say('Unit'), numeric: false },
        { heading: say('Mean'), unit: both, numeric: true },
        { heading: say('Fitted'), unit: both, numeric: true },
        { heading: say('Residual'), unit: both, numeric: true },
      ],
      rows: (inference.residuals ?? []).map(({ unit: name, fitted, residual }) => ({
        heading: name,
        cells: [bare(fitted + residual), bare(fitted), bare(residual, true)],
      })),
      notes: [],
    },
    steps: stepsOf(trial, inference),
  };
}

function stepsOf(trial: Trial, inference: Inference): { name: string; formula: string }[] {
  const tests = inference.anova.flatMap(({ term, mean_square: square, f, error }) =>
    square === null || f === null || f <= 0
      ? []
      : [
          {
            name: `F, ${termName(trial, term)}`,
            formula:
              `${say('mean square ÷ mean square of the error {between}', { between: say(`between ${error ?? 'unit'}s`) })} = ` +
              `${formatNumber(square, 2)} ÷ ${formatNumber(square / f, 2)} = ${formatNumber(f, 2)}`,
          },
        ],
  );
  const [pair] = inference.differences;
  if (pair && pair.estimate !== null && pair.se !== null && pair.se > 0 && pair.upper !== null) {
    const q = formatNumber((pair.upper - pair.estimate) / pair.se, 3);
    tests.push({
      name: say('Limits of a difference'),
      formula:
        `${say('difference ± (q ÷ √2) × its standard error; for the first pair')} ` +
        `${formatNumber(pair.estimate, 2, { plus: true })} ± ${q} × ${formatNumber(pair.se, 2)}`,
    });
  }
  return tests;
}
