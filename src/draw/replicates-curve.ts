import { line } from 'd3-shape';
import { scaleLinear } from 'd3-scale';
import { formatNumber } from '../compute/format/format-number.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings } from '../model/findings.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { say } from '../model/say.ts';
import { fluidScale } from './fluid.ts';
import { stretched } from './readings-panels.ts';
import { spread } from './spread.ts';
import { drawing, element, label, round } from './svg.ts';
import { gridlines, roundTicks, valueAxes } from './value-axis.ts';

const id = 'replicates-curve';
const base = 220;
const top = 36;
const styles = ['', ' second', ' third', ' fourth'];

interface Curve {
  power: number;
  points: { difference: number; replicates: number }[];
}

/**
 * How many replicates the next trial needs to tell a given difference, one curve for each power. Null where
 * no number of replicates could be reckoned.
 */
export function drawReplicatesCurve(findings: Findings): Figure | null {
  const curves = curvesOf(findings);
  if (curves.length === 0) return null;
  const points = curves.flatMap((curve) => curve.points);
  const differences = points.map(({ difference }) => difference);
  const x = fluidScale(
    [Math.min(...differences), Math.max(Math.min(...differences) + 1, ...differences)],
    [10, 82],
  );
  const highest = Math.max(...points.map(({ replicates }) => replicates));
  const y = scaleLinear().domain([0, highest]).nice(5).range([base, top]);
  const first = findings.next_trial[0]!;
  const title = say('Replicates that the next trial needs');
  const cv =
    first.cv_used === null
      ? ''
      : ` ${say('The coefficient of variation between units is taken as {cv}, from {from}.', { cv: formatPercent(first.cv_used, 1), from: first.from })}`;
  const description = [`${curves.map(sayCurve).join(' ')}${cv}`];
  const ends = spread(
    curves.map((curve) => y(curve.points.at(-1)!.replicates)),
    15,
  );
  return {
    id,
    title,
    description,
    svg: drawing(
      { id, title, description, kind: id },
      { height: base + 58 },
      label(say('Replicates of each treatment'), { class: 'strong', x: 0, y: 15 }),
      gridlines(x, top - 4, base, '%'),
      ...roundTicks([0, y.domain()[1]!], 5).map(({ value, text }) => {
        const at = round(y(value));
        return (
          element('line', {
            class: 'gridline',
            x1: x.at(x.domain[0]),
            x2: x.at(x.domain[1]),
            y1: at,
            y2: at,
          }) + label(text, { class: 'tick', x: '8%', y: at + 4, 'text-anchor': 'end' })
        );
      }),
      ...curves.map((curve, index) =>
        drawCurve(curve, styles[index % styles.length]!, x, (value) => y(value)),
      ),
      ...curves.map(({ power }, index) =>
        label(formatPercent(power, 0), { class: 'strong', x: '84%', y: ends[index]! + 4 }),
      ),
      label(say('power'), { class: 'tick', x: '84%', y: Math.min(...ends) - 12 }),
      valueAxes(x, base, '%'),
      label(say('Difference to be told, of the mean'), {
        class: 'strong',
        x: '46%',
        y: base + 40,
        'text-anchor': 'middle',
      }),
    ),
    table: {
      caption: title,
      columns: [
        { heading: say('Difference (% of the mean)'), numeric: true },
        { heading: say('Power (%)'), numeric: true },
        { heading: say('Replicates of each treatment'), numeric: true },
        { heading: say('Coefficient of variation (%)'), numeric: true },
        { heading: say('From'), numeric: false },
      ],
      rows: findings.next_trial.map((each) => [
        formatNumber(each.difference_percent, 0),
        formatNumber(each.power * 100, 0),
        each.replicates_needed === null ? (each.reason ?? '') : formatNumber(each.replicates_needed, 0),
        each.cv_used === null ? '' : formatNumber(each.cv_used, 1),
        each.from,
      ]),
    },
  };
}

function curvesOf(findings: Findings): Curve[] {
  const byPower = Map.groupBy(findings.next_trial, ({ power }) => power);
  return [...byPower]
    .sort(([a], [b]) => a - b)
    .map(([power, cases]) => ({
      power: Math.round(power * 100),
      points: cases
        .flatMap(({ difference_percent: difference, replicates_needed: replicates }) =>
          replicates === null ? [] : [{ difference, replicates }],
        )
        .sort((a, b) => a.difference - b.difference),
    }))
    .filter(({ points }) => points.length > 0);
}

function drawCurve(
  { power, points }: Curve,
  style: string,
  x: ReturnType<typeof fluidScale>,
  y: (value: number) => number,
): string {
  const path = line<(typeof points)[number]>()
    .x(({ difference }) => x.percent(difference))
    .y(({ replicates }) => round(y(replicates) - base));
  return element(
    'g',
    { class: 'line', 'data-power': String(power) },
    stretched(
      base,
      element('path', {
        class: `curve${style}`,
        d: path(points) ?? '',
        'vector-effect': 'non-scaling-stroke',
      }),
    ),
    ...points.flatMap(({ difference, replicates }) => [
      element('circle', { class: 'estimate', cx: x.at(difference), cy: y(replicates), r: 4.5 }),
    ]),
  );
}

function sayCurve({ power, points }: Curve): string {
  const said = points.map(({ difference, replicates }) =>
    say('{replicates} for {difference}', { replicates, difference: formatPercent(difference, 0) }),
  );
  return say('At {power} power: {needs}.', { power: formatPercent(power, 0), needs: said.join(', ') });
}
