import { beforeNumber } from '../compute/format/before-number.ts';
import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatQuantity } from '../compute/format/format-quantity.ts';
import { formatRange } from '../compute/format/format-range.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import { measureAcrossSeasons } from '../compute/words/measure-across-seasons.ts';
import { tell } from '../compute/words/tell.ts';
import { joinWords, type Words } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { quantityLabel } from './both-units.ts';
import { cultivarMeansTable } from './cultivar-means-table.ts';
import {
  type CultivarOrder,
  type CultivarRow,
  cultivarRows,
  firstRows,
  setHeading,
} from './cultivar-rows.ts';
import { figureId } from './figure-id.ts';
import { type FluidScale, fluidScale, niceDomain, placed } from './fluid.ts';
import { narrow } from './grid-map.ts';
import { intervalMark } from './interval-mark.ts';
import { intervalWords } from './interval-words.ts';
import { placeLabelledDots } from './labelled-dots.ts';
import { type Row, stackedRows } from './stacked-rows.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import { gridlines } from './value-axis.ts';
import { wrapText } from './wrap-text.ts';
import { say, sayCount } from '../model/say.ts';

/** How the cultivars are sorted, and what the figure's id begins with where a page holds several. */
export interface CultivarMeansOptions {
  order?: CultivarOrder;
  id?: string;
  /** So many cultivars are drawn at most, beside the check; all where absent. The title says so. */
  most?: number;
  /** Trials that are the reader's own and not published: squares, each with these words beside it. */
  own?: { trials: ReadonlySet<string>; words: string };
}

const range = [4, 92] as const;
const labelSize = 12;
const headingHeight = 28;
/** In a row of more trials than this only the lowest and the highest are labelled; the table has them all. */
const mostLabels = 6;
/** The dots of more trials than this are drawn small and close, so that a row keeps to a height that can be looked over. */
const mostWide = 30;
const close = { radius: 3, lineHeight: 7, reach: 2 } as const;
const wide = { radius: 4.5, lineHeight: 16, reach: 0 } as const;

interface Context {
  entry: Seasons;
  name: (cultivar: string) => string;
  scale: FluidScale;
  digits: number;
  seasons: ReadonlyMap<string, string>;
  replicated: ReadonlySet<string>;
  own: NonNullable<CultivarMeansOptions['own']>;
}

const noneOwn = { trials: new Set<string>(), words: '' };

/**
 * Every trial's mean in a row for each cultivar, labelled with its season, and below them the cultivar's
 * adjusted mean with its own 95% interval. Cultivars of different linked sets stand under headings of their
 * own: they are not compared.
 */
export function drawCultivarMeans(
  entry: Seasons,
  name: (cultivar: string) => string,
  options: CultivarMeansOptions = {},
): Figure {
  const all = cultivarRows(entry, name, options.order);
  const rows = firstRows(all, entry.check, options.most ?? all.length);
  const shown = rows.flatMap(({ adjusted, cells }) => [
    adjusted.mean,
    ...(adjusted.lower === null ? [] : [adjusted.lower, adjusted.upper!]),
    ...cells.map(({ mean }) => mean),
  ]);
  const context: Context = {
    entry,
    name,
    scale: fluidScale(niceDomain(widened(shown)), range),
    digits: digitsAcrossSeasons(entry),
    seasons: seasonNames(entry.trials),
    replicated: new Set(entry.trials.flatMap(({ id, replicated }) => (replicated ? [id] : []))),
    own: options.own ?? noneOwn,
  };
  const drawn = rows.map((row, index): Row => {
    const begins = row.set !== rows[index - 1]?.set && entry.linked_sets.length > 1;
    if (!begins) return (top) => drawRow(row, context, top);
    return (top) => {
      const heading = label(setHeading(entry, all, row.set), { class: 'aside', x: 0, y: top + 16 });
      const { svg, height } = drawRow(row, context, top + headingHeight);
      return { svg: heading + svg, height: height + headingHeight };
    };
  });
  const id = figureId(options.id ?? '', 'cultivar-means');
  const what = measureAcrossSeasons(entry).replace(/^./, (letter) => letter.toUpperCase());
  const title =
    rows.length < all.length
      ? say('{measure}: {count} of {all} cultivars in every trial, and their adjusted means', {
          measure: what,
          count: rows.length,
          all: all.length,
        })
      : say('{measure}: each cultivar in every trial, and its adjusted mean', { measure: what });
  const description = describe(rows, context);
  return {
    id,
    title,
    description,
    svg: stackedRows({ id, title, description, kind: 'cultivar-means' }, drawn, {
      scale: context.scale,
      unit: entry.unit,
    }),
    // Made when it is asked for: of many trials it is long.
    get table() {
      return cultivarMeansTable(title, entry, rows, name);
    },
  };
}

/** An axis shorter than this share of its values would make much of differences that are nothing. Common practice, no source. */
const leastReach = 0.2;

function widened(values: readonly number[]): readonly number[] {
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const lacking = leastReach * Math.max(Math.abs(lowest), Math.abs(highest)) - (highest - lowest);
  return lacking <= 0 ? values : [lowest - lacking / 2, highest + lacking / 2];
}

function drawRow(row: CultivarRow, context: Context, top: number): { svg: string; height: number } {
  const { entry, name, scale, digits, seasons, replicated, own } = context;
  const { adjusted, cells } = row;
  const printed = formatQuantity(adjusted.mean, entry.unit, digits);
  const room = narrow - textWidth(`${printed.metric} · ${printed.us ?? ''}`, 13, true) - 10;
  const check = row.cultivar === entry.check ? ` (${say('check')})` : '';
  const heading = wrapText(name(row.cultivar) + check, room, 14, true);
  const after = top + 14 + (heading.length - 1) * 17;
  const interval =
    adjusted.lower === null ? null : { centre: adjusted.mean, lower: adjusted.lower, upper: adjusted.upper! };
  const facts = [
    sayCount(adjusted.trials, 'in {count} trial', 'in {count} trials'),
    ...(adjusted.letters === null || adjusted.letters === ''
      ? []
      : [
          say(adjusted.letters.length === 1 ? 'letter {letters}' : 'letters {letters}', {
            letters: adjusted.letters,
          }),
        ]),
  ].join(', ');
  const words = [
    ...heading.map((text, index) => label(text, { class: 'heading', x: 0, y: top + 14 + index * 17 })),
    quantityLabel('', printed, '', { class: 'strong', x: '100%', y: top + 14, 'text-anchor': 'end' }),
    label(facts, { class: 'tick', x: 0, y: after + 17 }),
    interval === null
      ? ''
      : quantityLabel(
          intervalWords(formatRange(interval.lower, interval.upper, entry.unit, digits)),
          formatRange(interval.lower, interval.upper, entry.unit, digits),
          '',
          {
            class: 'tick',
            x: 0,
            y: after + 33,
          },
        ),
  ];
  const labelled = new Set(cellsToLabel(cells));
  const dots = cells.map((cell) => ({
    percent: scale.percent(cell.mean),
    text: own.trials.has(cell.trial) ? own.words : labelled.has(cell) ? seasons.get(cell.trial)! : '',
  }));
  const { radius, lineHeight, reach } = cells.length > mostWide ? close : wide;
  const places = placeLabelledDots(dots, radius, labelSize, reach);
  const stack = Math.max(0, ...places.map(({ line }) => line)) * lineHeight;
  const dotsAt = after + (interval === null ? 32 : 48) + stack;
  const meanAt = dotsAt + 18;
  const marks = [
    gridlines(scale, dotsAt - stack - 8, meanAt + 10, entry.unit),
    ...cells.map((cell, index) => {
      const { line, side } = places[index]!;
      const { text } = dots[index]!;
      const y = dotsAt - line * lineHeight;
      const x = scale.at(cell.mean);
      const away = side === 'left' ? -radius - 4 : radius + 4;
      const anchor = side === 'left' ? 'end' : 'start';
      return (
        dotMark(x, y, radius, replicated.has(cell.trial) ? 'dot' : 'dot open', own.trials.has(cell.trial)) +
        (text === '' ? '' : label(text, { class: 'tick', x, dx: away, y: y + 4, 'text-anchor': anchor }))
      );
    }),
    interval === null ? '' : intervalMark(scale, interval, meanAt),
    placed(scale.at(adjusted.mean), meanAt, element('path', { class: 'estimate', d: 'M0-6L6 0L0 6L-6 0Z' })),
  ];
  return {
    svg: element('g', { class: check === '' ? 'row' : 'row check' }, ...words, ...marks),
    height: meanAt + 22 - top,
  };
}

/** A dot, or a square for a trial of the reader's own. */
function dotMark(x: string, y: number, radius: number, kind: string, own: boolean): string {
  if (!own) return element('circle', { class: kind, cx: x, cy: y, r: radius });
  return placed(x, y, element('path', { class: kind, d: 'M-4.5-4.5H4.5V4.5H-4.5Z' }));
}

/** All cells, or of many the lowest and the highest. */
function cellsToLabel(cells: Seasons['cells']): Seasons['cells'] {
  if (cells.length <= mostLabels) return cells;
  const sorted = [...cells].sort((a, b) => a.mean - b.mean);
  return [sorted[0]!, sorted.at(-1)!];
}

/** So many adjusted means are said in words; the table has the others. */
const saidMeans = 8;

function describe(rows: readonly CultivarRow[], { entry, name, digits, replicated, own }: Context): Words {
  const said = rows
    .slice(0, saidMeans)
    .map(({ cultivar, adjusted }): Words => [
      `${beforeNumber(name(cultivar))} `,
      formatQuantity(adjusted.mean, entry.unit, digits),
    ]);
  const more =
    rows.length > saidMeans ? ` ${say('and {count} more', { count: rows.length - saidMeans })}` : '';
  const open = entry.trials.some(({ id }) => !replicated.has(id))
    ? ` ${say('Open dots are of trials that had no error of their own.')}`
    : '';
  const square = entry.trials.some(({ id }) => own.trials.has(id))
    ? ` ${say('Squares are of {own}.', { own: own.words })}`
    : '';
  const marks = say(
    rows.some(({ adjusted }) => adjusted.lower !== null)
      ? 'Dots are the trials’ own means. The diamond is the cultivar’s mean adjusted for the trials it was in with its own 95% interval, which is no test of a difference.'
      : 'Dots are the trials’ own means. The diamond is the cultivar’s mean adjusted for the trials it was in.',
  );
  const means = tell('Adjusted means: {means}.', { means: [...joinWords(said, '; '), more] });
  return [`${marks} `, ...means, `${open}${square}`];
}
