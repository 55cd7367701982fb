import { formatPercent } from '../compute/format/format-percent.ts';
import { digitsAsWritten } from '../compute/growing/quantities.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import { treatmentName } from '../compute/format/level-names.ts';
import { otherVariableName } from '../compute/tables/other-variable-table.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { Trial } from '../model/trial.ts';
import { figureId } from './figure-id.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import { type FluidScale, fluidScale, niceDomain, placed } from './fluid.ts';
import { narrow } from './grid-map.ts';
import { intervalMark } from './interval-mark.ts';
import { otherVariableTwin } from './other-variable-twin.ts';
import { stackedRows } from './stacked-rows.ts';
import { element, label } from './svg.ts';
import { gridlines } from './value-axis.ts';
import { wrapText } from './wrap-text.ts';

type OtherVariable = NonNullable<Findings['other_variables']>[number];
type Row = OtherVariable['treatments'][number];

const range = [5, 91] as const;

/**
 * A variable beside the primary one, a row a treatment: of what was measured the lowest to the highest with
 * quartiles and mean; of marks and counts how often each was given; of yes or no the part that was yes, with its
 * interval where there is one. Null where no value is known.
 */
export function drawOtherVariable(
  trial: Trial,
  findings: Findings,
  entry: OtherVariable,
  options: FigureOptions = {},
): Figure | null {
  const { names } = withDefaults(trial, options);
  const known = entry.treatments.filter(({ n }) => n > 0);
  if (known.length === 0) return null;
  const rows = known.map((row) => ({ row, name: treatmentName(trial, row.treatment, names) }));
  const { kind, unit } = entry.variable;
  const axisUnit = kind === 'yes or no' ? '%' : unit;
  const scale = scaleOf(entry, known);
  const [from, to] = scale.domain;
  // Marks and counts are whole: no tick between them.
  const ticks = kind === 'measured' || kind === 'yes or no' ? 5 : Math.max(1, Math.min(5, to - from));
  const drawn = rows.map(({ row, name }) => (y: number) => {
    const heading = wrapText(name, narrow - 90, 14, true);
    const foot = y + 14 + heading.length * 17;
    const svg = element(
      'g',
      { class: 'row' },
      ...heading.map((text, line) => label(text, { class: 'heading', x: 0, y: y + 14 + line * 17 })),
      label(aside(entry, row), { class: 'aside', x: '100%', y: y + 14, 'text-anchor': 'end' }),
      gridlines(scale, foot - 6, foot + 24, axisUnit, ticks),
      kind === 'measured' ? spreadMarks(row, scale, foot + 10) : '',
      kind === 'counted' || kind === 'scored' ? countMarks(row, scale, foot + 10) : '',
      kind === 'yes or no' ? proportionMark(row, scale, foot + 10) : '',
    );
    return { svg, height: foot + 34 - y };
  });
  const id = figureId('other-variable', entry.variable.id, entry.cut);
  const title = say('{variable} by treatment', { variable: otherVariableName(findings, entry) });
  const said = rows.map(({ row, name }) => `${name}: ${aside(entry, row)}.`);
  const description = [[legend(kind), ...said].join(' ')];
  return {
    id,
    title,
    description,
    svg: stackedRows({ id, title, description, kind: 'other-variable' }, drawn, {
      scale,
      unit: axisUnit,
      ticks,
    }),
    table: otherVariableTwin(title, entry, rows),
  };
}

function scaleOf({ variable }: OtherVariable, rows: readonly Row[]): FluidScale {
  if (variable.kind === 'yes or no') return fluidScale([0, 100], range);
  const ends = rows.flatMap(({ minimum, maximum }) => [minimum!, maximum!]);
  return fluidScale(niceDomain(ends), range);
}

function legend(kind: OtherVariable['variable']['kind']): string {
  if (kind === 'measured')
    return say(
      'A line from the lowest to the highest, thick between the quartiles; the triangle is the mean.',
    );
  if (kind === 'yes or no') return say('The mark is the part that was yes, the line its 95% interval.');
  return say('Each ring is a mark, with how often it was given written in it.');
}

/** What is said beside a treatment's name. */
function aside({ variable }: OtherVariable, { n, median, proportion }: Row): string {
  if (variable.kind === 'yes or no') {
    return say('{yes} of {n}, {percent}', {
      yes: proportion?.yes ?? 0,
      n,
      percent: formatPercent(100 * (proportion?.proportion ?? 0), 0),
    });
  }
  const middle = formatNumber(median!, digitsAsWritten(median!));
  return say('median {median}, n = {n}', { median: middle, n });
}

function spreadMarks(row: Row, scale: FluidScale, y: number): string {
  const line = (from: number, to: number, kind: string) =>
    element('line', { class: kind, x1: scale.at(from), x2: scale.at(to), y1: y, y2: y });
  return (
    line(row.minimum!, row.maximum!, 'interval') +
    line(row.lower_quartile!, row.upper_quartile!, 'quartiles') +
    (row.mean === null
      ? ''
      : placed(scale.at(row.mean), y, element('path', { class: 'mean', d: 'M0 2L5 11H-5Z' })))
  );
}

function countMarks({ counts }: Row, scale: FluidScale, y: number): string {
  return (counts ?? [])
    .map(
      ({ value, count }) =>
        element('circle', { class: 'dot open', cx: scale.at(value), cy: y, r: 10 }) +
        label(String(count), { class: 'tick', x: scale.at(value), y: y + 4, 'text-anchor': 'middle' }),
    )
    .join('');
}

function proportionMark({ proportion }: Row, scale: FluidScale, y: number): string {
  if (proportion === null) return '';
  const centre = 100 * proportion.proportion;
  const { lower, upper } = proportion;
  const interval =
    lower === null || upper === null
      ? ''
      : intervalMark(scale, { centre, lower: 100 * lower, upper: 100 * upper }, y);
  return (
    interval + placed(scale.at(centre), y, element('path', { class: 'estimate', d: 'M0-6L6 0L0 6L-6 0Z' }))
  );
}
