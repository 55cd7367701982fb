import { beforeNumber } from '../compute/format/before-number.ts';
import { formatQuantity } from '../compute/format/format-quantity.ts';
import { formatRange } from '../compute/format/format-range.ts';
import { tell } from '../compute/words/tell.ts';
import { joinWords, type Words } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';
import type { Findings } from '../model/findings.ts';
import type { Trial } from '../model/trial.ts';
import { say } from '../model/say.ts';
import { quantityLabel } from './both-units.ts';
import { dodge } from './dodge.ts';
import { type FigureOptions, withDefaults } from './figure-options.ts';
import { type FluidScale, fluidScale, niceDomain, placed } from './fluid.ts';
import { intervalMark } from './interval-mark.ts';
import { intervalWords } from './interval-words.ts';
import { stackedRows } from './stacked-rows.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import { measureOf, type TreatmentRow, treatmentRows } from './treatment-rows.ts';
import { gridlines } from './value-axis.ts';
import { narrow } from './grid-map.ts';
import { weightsTable } from './weights-table.ts';
import { wrapText } from './wrap-text.ts';

/** The order of the treatments: the heaviest first, or as the trial gives them. */
export interface WeightsOptions extends FigureOptions {
  order?: 'mean' | 'given';
}

const id = 'weights-by-treatment';
/** The width at which dots begin to overlap: a phone's column lets them touch, a page does not. */
const dodgedWidth = 430;
const radius = 4.5;
const range = [5, 91] as const;

/**
 * Every plant (or, where pots were weighed whole, every pot) a dot, one row a treatment with its mean, and
 * an interval only where the replicates allow one. The axis is metric with the US unit below it.
 */
export function drawWeightsByTreatment(
  trial: Trial,
  findings: Findings,
  options: WeightsOptions = {},
): Figure {
  const measure = measureOf(findings);
  const rows = treatmentRows(trial, findings, measure, withDefaults(trial, options));
  if (options.order !== 'given') rows.sort((a, b) => (b.summary?.mean ?? -1) - (a.summary?.mean ?? -1));
  const { unit } = findings.variable;
  const shown = rows.flatMap(({ values, interval }) => [
    ...values,
    ...(interval === null ? [] : [interval.lower, interval.upper]),
  ]);
  const scale = fluidScale(niceDomain(shown.length === 0 ? [0, 1] : shown), range);
  const ofPots = measure === 'per_pot';
  const variable = findings.variable.name;
  const each = ofPots
    ? say('{variable} of each pot by treatment', { variable })
    : say('{variable} of each plant by treatment', { variable });
  const several = (trial.metadata.dates?.cuts?.length ?? 1) > 1;
  const title = several ? say('{title}, all cuts together', { title: each }) : each;
  const description = describeRows(rows, unit, ofPots);
  const below = meansBelow(rows, unit);
  return {
    id,
    title,
    description,
    svg: stackedRows(
      { id, title, description, kind: id },
      rows.map((row) => (top) => drawRow(row, { scale, top, unit, below })),
      { scale: shown.length === 0 ? null : scale, unit },
    ),
    table: weightsTable(title, rows, unit),
  };
}

const headed = (row: TreatmentRow) => (row.check ? say('{name} (check)', { name: row.name }) : row.name);
const asideOf = ({ values, lost }: TreatmentRow) => [`n = ${String(values.length)}`, ...lost].join(', ');
const printedMean = ({ summary, digits }: TreatmentRow, unit: string) =>
  typeof summary?.mean === 'number' ? formatQuantity(summary.mean, unit, digits) : null;

/** What a mean takes at the right of a line, with both units, which are shown until one is chosen. */
function meanWidth(row: TreatmentRow, unit: string): number {
  const printed = printedMean(row, unit);
  const words = printed === null ? say('no weight known') : `${printed.metric} · ${printed.us ?? ''}`;
  return textWidth(words, 13, true) + 10;
}

/**
 * Whether the means stand a line lower, beside the counts: where a name would be broken beside its mean in a
 * phone's column, though a line of its own holds it, and the counts leave room. Alike for all rows.
 */
function meansBelow(rows: readonly TreatmentRow[], unit: string): boolean {
  const linesIn = (row: TreatmentRow, room: number) => wrapText(headed(row), room, 14, true).length;
  const broken = rows.some((row) => linesIn(row, narrow - meanWidth(row, unit)) > linesIn(row, narrow));
  return broken && rows.every((row) => textWidth(asideOf(row), 12) + meanWidth(row, unit) <= narrow);
}

interface Place {
  scale: FluidScale;
  top: number;
  unit: string;
  /** Whether the mean stands a line lower than the name. */
  below: boolean;
}

function drawRow(row: TreatmentRow, { scale, top, unit, below }: Place): { svg: string; height: number } {
  const { summary, interval, digits, values } = row;
  const mean = summary?.mean ?? null;
  const pixels = values.map((value) => (scale.percent(value) / 100) * dodgedWidth);
  const levels = dodge(pixels, 2 * radius);
  const stack = (Math.max(-1, ...levels) + 1) * 2 * radius;
  const printed = printedMean(row, unit);
  const heading = wrapText(headed(row), below ? narrow : narrow - meanWidth(row, unit), 14, true);
  const after = top + 14 + (heading.length - 1) * 17;
  const right = { x: '100%', y: below ? after + 17 : top + 14, 'text-anchor': 'end' };
  const limits = interval && formatRange(interval.lower, interval.upper, unit, digits);
  const notes = [
    { before: `${say('Adjusted mean')} `, quantity: row.adjusted },
    { before: limits === null ? '' : intervalWords(limits), quantity: limits },
  ].flatMap(({ before, quantity }) => (quantity === null ? [] : [{ before, quantity }]));
  const baseline = after + 6 + (1 + notes.length) * 16 + 6 + stack;
  const dots = values.map((value, index) =>
    element('circle', {
      class: 'dot',
      cx: scale.at(value),
      cy: baseline - radius - levels[index]! * 2 * radius,
      r: radius,
    }),
  );
  const words = [
    ...heading.map((text, index) => label(text, { class: 'heading', x: 0, y: top + 14 + index * 17 })),
    printed === null
      ? label(say('no weight known'), { class: 'aside', ...right })
      : quantityLabel('', printed, '', { class: 'strong', ...right }),
    label(asideOf(row), { class: 'tick', x: 0, y: after + 17 }),
    ...notes.map(({ before, quantity }, index) =>
      quantityLabel(before, quantity, '', { class: 'tick', x: 0, y: after + 33 + index * 16 }),
    ),
  ];
  const marks = [
    gridlines(scale, baseline - stack - 3, baseline + 16, unit),
    element('line', { class: 'baseline', x1: '0%', x2: '100%', y1: baseline + 0.5, y2: baseline + 0.5 }),
    ...dots,
    interval === null ? '' : intervalMark(scale, interval, baseline + 10, row.adjusted !== null),
    mean === null
      ? ''
      : placed(scale.at(mean), baseline, element('path', { class: 'mean', d: 'M0 2L5 11H-5Z' })),
  ];
  return {
    svg: element('g', { class: row.check ? 'row check' : 'row' }, ...words, ...marks),
    height: baseline + 26 - top,
  };
}

/** So many means are said in words; of more, the ends. */
const saidMeans = 8;

function describeRows(rows: readonly TreatmentRow[], unit: string, ofPots: boolean): Words {
  const known = rows
    .filter(({ summary }) => typeof summary?.mean === 'number')
    .sort((a, b) => b.summary!.mean! - a.summary!.mean!);
  const said = known.map(({ name, summary, digits }): Words => [
    `${beforeNumber(name)} `,
    formatQuantity(summary!.mean!, unit, digits),
  ]);
  const means =
    said.length > saidMeans
      ? tell('from {most} down to {least}, {count} in all', {
          most: said[0]!,
          least: said.at(-1)!,
          count: said.length,
        })
      : said.length === 0
        ? [say('none known')]
        : joinWords(said, '; ');
  const intervals = rows.some(({ interval }) => interval !== null)
    ? say('The line below a mean is its 95% interval.')
    : ofPots
      ? say('No interval is drawn, because single pots are not the replicates.')
      : say('No interval is drawn, because single plants are not the replicates.');
  const dots = ofPots
    ? tell('Each dot is one pot. Means: {means}.', { means })
    : tell('Each dot is one plant. Means: {means}.', { means });
  return [...dots, ` ${intervals}`];
}
