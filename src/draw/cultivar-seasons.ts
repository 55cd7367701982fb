import { digitsAcrossSeasons } from '../compute/format/digits-across-seasons.ts';
import { formatBare, formatQuantity } from '../compute/format/format-quantity.ts';
import { formatPercent } from '../compute/format/format-percent.ts';
import { seasonNames } from '../compute/format/season-names.ts';
import { measureAcrossSeasons } from '../compute/words/measure-across-seasons.ts';
import { tell } from '../compute/words/tell.ts';
import { joinWords } from '../compute/words/words.ts';
import type { Figure, FigureTable } from '../model/figure.ts';
import type { Seasons } from '../model/generated/seasons.ts';
import { quantityLabel } from './both-units.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import { figureId } from './figure-id.ts';
import { type FluidScale, fluidScale, niceDomain, placed } from './fluid.ts';
import { narrow } from './grid-map.ts';
import { stackedRows } from './stacked-rows.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';
import { gridlines } from './value-axis.ts';
import { wrapText } from './wrap-text.ts';
import { say } from '../model/say.ts';

/** One trial in which a cultivar stood beside the check. */
interface Meeting {
  season: string;
  own: number;
  check: number;
  percent: number | null;
}

/**
 * A cultivar beside the check in a row for each trial that grew both, oldest first: its own mean a dot, the
 * check's a triangle, a line from one to the other. Null where no trial did, or the cultivar is the check.
 */
export function drawCultivarSeasons(
  entry: Seasons,
  cultivar: string,
  name: (cultivar: string) => string,
): Figure | null {
  const meetings = meetingsOf(entry, cultivar);
  if (entry.check === null || meetings.length === 0) return null;
  const digits = digitsAcrossSeasons(entry);
  const { unit } = entry;
  const scale = fluidScale(niceDomain(meetings.flatMap(({ own, check }) => [own, check])), [5, 91]);
  const check = name(entry.check);
  const id = figureId('cultivar-seasons');
  const what = measureAcrossSeasons(entry).replace(/^./, (letter) => letter.toUpperCase());
  const title = say('{measure} of {cultivar} beside the check {check}, trial by trial', {
    measure: what,
    cultivar: name(cultivar),
    check,
  });
  const said = meetings.map(({ season, own, check: other }) =>
    tell('{season}: {own}, the check {check}.', {
      season,
      own: formatQuantity(own, unit, digits),
      check: formatQuantity(other, unit, digits),
    }),
  );
  const marks = say('The dot is {cultivar}, the triangle the check.', { cultivar: name(cultivar) });
  const judged = say('A single trial’s difference is judged on that trial’s own page.');
  const description = [`${marks} `, ...joinWords(said, ' '), ` ${judged}`];
  return {
    id,
    title,
    description,
    svg: stackedRows(
      { id, title, description, kind: 'cultivar-seasons' },
      meetings.map((meeting) => (top) => drawRow(meeting, check, scale, top, { unit, digits })),
      { scale, unit },
    ),
    table: meetingsTable(title, meetings, name(cultivar), check, { unit, digits }),
  };
}

function meetingsOf(entry: Seasons, cultivar: string): Meeting[] {
  const seasons = seasonNames(entry.trials);
  const meanOf = (of: string, trial: string) =>
    entry.cells.find((cell) => cell.cultivar === of && cell.trial === trial)?.mean;
  if (entry.check === null || cultivar === entry.check) return [];
  return entry.trials.flatMap(({ id, replicated }) => {
    const [own, check] = [meanOf(cultivar, id), meanOf(entry.check!, id)];
    if (own === undefined || check === undefined) return [];
    const season = `${seasons.get(id)!}${replicated ? '' : ` (${say('not replicated')})`}`;
    return [{ season, own, check, percent: check > 0 ? (100 * own) / check : null }];
  });
}

interface Printed {
  unit: string;
  digits: number;
}

function drawRow(
  { season, own, check, percent }: Meeting,
  checkName: string,
  scale: FluidScale,
  top: number,
  { unit, digits }: Printed,
): { svg: string; height: number } {
  const share = percent === null ? '' : `, ${say('{percent} of it', { percent: formatPercent(percent, 0) })}`;
  const [printed, ofCheck] = [formatQuantity(own, unit, digits), formatQuantity(check, unit, digits)];
  const room = narrow - textWidth(`${printed.metric} · ${printed.us ?? ''}`, 13, true) - 10;
  const heading = wrapText(season, room, 14, true);
  const after = top + 14 + (heading.length - 1) * 17;
  // The check's name on lines of its own where its weight leaves a phone no room beside it.
  const beside = `${checkName} ${ofCheck.metric} · ${ofCheck.us ?? ''}${share}`;
  const above = textWidth(beside, 12) <= narrow ? [] : wrapText(checkName, narrow, 12);
  const foot = after + 17 + above.length * 16;
  const mark = foot + 23;
  const svg = element(
    'g',
    { class: 'row' },
    gridlines(scale, mark - 12, mark + 12, unit),
    ...heading.map((text, index) => label(text, { class: 'heading', x: 0, y: top + 14 + index * 17 })),
    quantityLabel('', printed, '', { class: 'strong', x: '100%', y: top + 14, 'text-anchor': 'end' }),
    ...above.map((text, index) => label(text, { class: 'tick', x: 0, y: after + 17 + index * 16 })),
    quantityLabel(above.length === 0 ? `${checkName} ` : '', ofCheck, share, {
      class: 'tick',
      x: 0,
      y: foot,
    }),
    element('line', { class: 'leader', x1: scale.at(check), x2: scale.at(own), y1: mark, y2: mark }),
    placed(scale.at(check), mark, element('path', { class: 'mean', d: 'M0-5L5 4H-5Z' })),
    element('circle', { class: 'dot', cx: scale.at(own), cy: mark, r: 4.5 }),
  );
  return { svg, height: mark + 20 - top };
}

function meetingsTable(
  caption: string,
  meetings: readonly Meeting[],
  name: string,
  check: string,
  { unit, digits }: Printed,
): FigureTable {
  return {
    caption,
    columns: [
      { heading: say('Trial'), numeric: false },
      ...columnsInBoth(name, unit),
      ...columnsInBoth(check, unit),
      { heading: say('Of the check (%)'), numeric: true },
    ],
    rows: meetings.map(({ season, own, check: other, percent }) => [
      season,
      ...cellsInBoth(formatBare(own, unit, digits), unit),
      ...cellsInBoth(formatBare(other, unit, digits), unit),
      percent === null ? '\u2013' : formatPercent(percent, 0).replace('%', ''),
    ]),
  };
}
