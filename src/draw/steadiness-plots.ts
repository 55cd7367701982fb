import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatBare } from '../compute/format/format-quantity.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import type { Figure } from '../model/figure.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { figureId } from './figure-id.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import { scatter } from './scatter.ts';
import { say } from '../model/say.ts';

/** More plots than this nobody compares; those of the cultivars that depart furthest are drawn. */
export const mostPlots = 12;

interface Point {
  trial: string;
  x: number;
  y: number;
}

/**
 * For each cultivar whose steadiness can be judged, how far it stood above or below the trial's adjusted mean
 * (upwards) against that mean (along the foot), a dot a trial, with its regression line. The cultivars whose
 * slopes depart the most from the others' come first, at most twelve. Empty where none can be judged.
 *
 * @param options.id what the figures' ids begin with where a page holds several comparisons
 * @param options.most so many plots at most
 */
export function drawSteadinessPlots(
  entry: Seasons,
  name: (cultivar: string) => string,
  options: { id?: string; most?: number } = {},
): Figure[] {
  const departure = ({ regression_slope: slope }: Seasons['stability'][number]) =>
    slope === null ? -1 : Math.abs(slope - 1);
  return [...entry.stability]
    .sort((a, b) => departure(b) - departure(a))
    .slice(0, options.most ?? mostPlots)
    .map((row) => drawOne(entry, row, name(row.cultivar), options.id ?? ''));
}

function drawOne(
  entry: Seasons,
  { cultivar, regression_slope: slope }: Seasons['stability'][number],
  name: string,
  prefix: string,
): Figure {
  const points = pointsOf(entry, cultivar);
  const id = figureId(prefix, 'steadiness', cultivar);
  const title = say('{cultivar} in poor and good trials', { cultivar: name });
  const line = slope === null ? null : lineThrough(points, slope);
  const said =
    slope === null
      ? say('The trials do not differ, so there is no line.')
      : say(
          'The line has a slope of {slope}: level is as the others, rising gains more than they do where trials yield more.',
          { slope: formatNumber(slope - 1, 2, { plus: true }) },
        );
  const dots = say(
    'A dot for each of {count} trials: its adjusted mean along the foot, and how far {cultivar} stood above or below it.',
    { count: points.length, cultivar: name },
  );
  const description = [`${dots} ${said}`];
  return {
    id,
    title,
    description,
    svg: scatter(
      { id, title, description, kind: 'steadiness' },
      {
        points,
        xUnit: entry.unit,
        xLabel: say('Adjusted mean of the trial'),
        yUnit: entry.unit,
        yLabel: say('Above or below it'),
        line,
      },
    ),
    get table() {
      return tableOf(title, entry, points);
    },
  };
}

/** Trials that grew one cultivar alone have nothing to hold it against. */
function pointsOf(entry: Seasons, cultivar: string): Point[] {
  const trials = new Map(entry.trials.map((trial) => [trial.id, trial]));
  return entry.cells.flatMap(({ cultivar: of, trial: id, mean }) => {
    if (of !== cultivar) return [];
    const { adjusted_mean: x = null, cultivars = 0 } = trials.get(id) ?? {};
    return x !== null && cultivars > 1 ? [{ trial: id, x, y: mean - x }] : [];
  });
}

/** The regression runs through the means of both; less the trial's mean, its slope is one less. */
function lineThrough(points: readonly Point[], slope: number): readonly [Point, Point] | null {
  if (points.length === 0) return null;
  const middle = (of: (point: Point) => number) =>
    points.reduce((total, point) => total + of(point), 0) / points.length;
  const [x, y] = [middle((point) => point.x), middle((point) => point.y)];
  const xs = points.map((point) => point.x);
  const end = (at: number): Point => ({ trial: '', x: at, y: y + (slope - 1) * (at - x) });
  return [end(Math.min(...xs)), end(Math.max(...xs))];
}

function tableOf(caption: string, entry: Seasons, points: readonly Point[]): Figure['table'] {
  const digits = digitsAcrossSeasons(entry);
  const seasons = seasonNames(entry.trials);
  return {
    caption,
    columns: [
      { heading: say('Trial'), numeric: false },
      ...columnsInBoth(say('Its adjusted mean'), entry.unit),
      ...columnsInBoth(say('Above or below it'), entry.unit),
    ],
    rows: [...points]
      .sort((a, b) => a.x - b.x)
      .map(({ trial, x, y }) => [
        seasons.get(trial)!,
        ...cellsInBoth(formatBare(x, entry.unit, digits), entry.unit),
        ...cellsInBoth(formatBare(y, entry.unit, digits, { plus: true }), entry.unit),
      ]),
  };
}
