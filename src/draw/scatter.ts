import { scaleLinear } from 'd3-scale';
import { type FluidScale, fluidScale, niceDomain } from './fluid.ts';
import { type About, drawing, element, label, round } from './svg.ts';
import { axisHeight, gridlines, uprightLabel, uprightLevels, valueAxes } from './value-axis.ts';

/** What a scatter shows. */
export interface Scatter {
  points: readonly { x: number; y: number }[];
  /** Of the axis along the foot; a unit of weight gets its US unit too, as it does upright. */
  xUnit: string;
  xLabel: string;
  yUnit: string;
  yLabel: string;
  /** A straight line through two points of the plane. */
  line: readonly [{ x: number; y: number }, { x: number; y: number }] | null;
}

const height = 220;

/** Dots in a plane, upright values from the label at the top left. */
export function scatter(about: About, { points, xUnit, xLabel, yUnit, yLabel, line }: Scatter): string {
  const x = fluidScale(niceDomain(points.map((point) => point.x)), [13, 90]);
  const yDomain = niceDomain([0, ...points.map((point) => point.y)]);
  const y = scaleLinear().domain(yDomain).range([height, 34]);
  const clipped = line === null ? null : within(line, yDomain);
  return drawing(
    about,
    { height: height + 12 + axisHeight(xUnit) + 22 },
    uprightLabel(yLabel, yUnit, { x: 0, y: 15 }),
    gridlines(x, 30, height + 8, xUnit),
    levels(x, yDomain, yUnit, (value) => y(value)),
    clipped === null
      ? ''
      : element('line', {
          class: 'leader',
          x1: x.at(clipped[0].x),
          y1: y(clipped[0].y),
          x2: x.at(clipped[1].x),
          y2: y(clipped[1].y),
        }),
    ...points.map((point) => element('circle', { class: 'dot', cx: x.at(point.x), cy: y(point.y), r: 4.5 })),
    valueAxes(x, height + 12, xUnit),
    label(xLabel, {
      class: 'strong',
      x: '50%',
      y: height + 12 + axisHeight(xUnit) + 14,
      'text-anchor': 'middle',
    }),
  );
}

type Point = Readonly<{ x: number; y: number }>;

/** The part of a line that lies between two heights. */
function within(
  [a, b]: readonly [Point, Point],
  [low, high]: readonly [number, number],
): readonly [Point, Point] {
  const at = (end: Point): Point => {
    const y = Math.min(high, Math.max(low, end.y));
    return a.y === b.y ? end : { x: a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y), y };
  };
  return [at(a), at(b)];
}

/** Level lines at round values, that at zero in ink. */
function levels(
  x: FluidScale,
  domain: readonly [number, number],
  unit: string,
  y: (value: number) => number,
): string {
  const [from, to] = x.domain;
  return uprightLevels(domain, unit, 5, (value, text) => {
    const at = round(y(value));
    return (
      element('line', {
        class: value === 0 ? 'zero' : 'gridline',
        x1: x.at(from),
        x2: x.at(to),
        y1: at,
        y2: at,
      }) + label(text, { class: 'tick', x: '11%', y: at + 4, 'text-anchor': 'end' })
    );
  });
}
