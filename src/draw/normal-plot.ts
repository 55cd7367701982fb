import { extent, quantile } from 'd3-array';
import type { Figure } from '../model/figure.ts';
import type { Findings, Inference } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import { say } from '../model/say.ts';
import { analysed } from './differences.ts';
import { figureId } from './figure-id.ts';
import { unitsTable } from './residual-plot.ts';
import { scatter } from './scatter.ts';

/**
 * The residuals against the scores expected of a normal distribution, with a line through the quartiles of
 * both: dots near it are as an analysis of variance supposes. Null where there are no residuals.
 */
export function drawNormalPlot(trial: Trial, findings: Findings, inference: Inference): Figure | null {
  const residuals = inference.residuals ?? [];
  if (residuals.length === 0) return null;
  const { unit } = findings.variable;
  const id = figureId('normal-plot', inference.measure, inference.cut);
  const title = say('Normal plot of the residuals: {analysed}', { analysed: analysed(inference) });
  const w = inference.checks?.shapiro_wilk?.w;
  const shapiro = typeof w === 'number' ? ` Shapiro-Wilk W = ${formatNumber(w, 3)}.` : '';
  const said =
    say(
      'Residuals in order against the scores expected of a normal distribution. Dots near the line through the quartiles are as the analysis supposes.',
    ) + shapiro;
  const description = [said];
  const points = residuals.map(({ normal_score: x, residual: y }) => ({ x, y }));
  return {
    id,
    title,
    description,
    svg: scatter(
      { id, title, description, kind: 'normal-plot' },
      {
        points,
        xUnit: '1',
        xLabel: say('Expected normal score'),
        yUnit: unit,
        yLabel: say('Residual'),
        line: quartileLine(points),
      },
    ),
    table: unitsTable(title, trial, findings, inference),
  };
}

type Point = Readonly<{ x: number; y: number }>;

/** Through the lower and upper quartiles (type 7) of both, drawn over the scores' whole range. */
function quartileLine(points: readonly Point[]): readonly [Point, Point] | null {
  const quartiles = (of: (point: Point) => number) => [0.25, 0.75].map((p) => quantile(points, p, of) ?? 0);
  const [x1, x2] = quartiles(({ x }) => x);
  const [y1, y2] = quartiles(({ y }) => y);
  const [from, to] = extent(points, ({ x }) => x);
  if (x1 === x2 || from === undefined || to === undefined) return null;
  const slope = (y2! - y1!) / (x2! - x1!);
  const at = (x: number) => ({ x, y: y1! + slope * (x - x1!) });
  return [at(from), at(to)];
}
