import { formatBare } from '../compute/format/format-quantity.ts';
import { digitsOfMean } from '../compute/format/digits-of-mean.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import { printedResolution } from '../compute/format/printed-resolution.ts';
import type { Figure, FigureTable } from '../model/figure.ts';
import type { Findings, Inference } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { analysed } from './differences.ts';
import { figureId } from './figure-id.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import { scatter } from './scatter.ts';

/**
 * The residual of each analysed unit against its fitted value: a funnel would say that spread grows with the
 * mean. Null where there are no residuals.
 */
export function drawResidualPlot(trial: Trial, findings: Findings, inference: Inference): Figure | null {
  const residuals = inference.residuals ?? [];
  if (residuals.length === 0) return null;
  const { unit } = findings.variable;
  const id = figureId('residual-plot', inference.measure, inference.cut);
  const title = say('Residuals against fitted values: {analysed}', { analysed: analysed(inference) });
  const said = say(
    'Each dot is one experimental unit ({count} in all). An even band about zero is as it should be; a funnel would say that spread grows with the mean.',
    { count: residuals.length },
  );
  const description = [said];
  return {
    id,
    title,
    description,
    svg: scatter(
      { id, title, description, kind: 'residual-plot' },
      {
        points: residuals.map(({ fitted, residual }) => ({ x: fitted, y: residual })),
        xUnit: unit,
        xLabel: say('Fitted value'),
        yUnit: unit,
        yLabel: say('Residual'),
        line: null,
      },
    ),
    table: unitsTable(title, trial, findings, inference),
  };
}

/** The table twin of the residual plot and the normal plot: every unit with fitted value, residual and score. */
export function unitsTable(
  caption: string,
  trial: Trial,
  findings: Findings,
  inference: Inference,
): FigureTable {
  const { unit } = findings.variable;
  const digits = digitsOfMean(printedResolution(trial.metadata.variables[0]), 12);
  return {
    caption,
    columns: [
      { heading: say('Unit'), numeric: false },
      { heading: say('Container'), numeric: false },
      ...columnsInBoth(say('Fitted'), unit),
      ...columnsInBoth(say('Residual'), unit),
      { heading: say('Expected normal score'), numeric: true },
    ],
    rows: (inference.residuals ?? []).map(
      ({ unit: name, container, fitted, residual, normal_score: score }) => [
        name,
        container,
        ...cellsInBoth(formatBare(fitted, unit, digits), unit),
        ...cellsInBoth(formatBare(residual, unit, digits, { plus: true }), unit),
        formatNumber(score, 2, { plus: true }),
      ],
    ),
  };
}
