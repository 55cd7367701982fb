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
import { drawing, element, label } from './svg.ts';
import { axisHeight, gridlines, valueAxes } from './value-axis.ts';
import { say } from '../model/say.ts';

/** One trial in which a cultivar stood beside the check. */
interface Meeting {
  season: string;
  own: number;
  check: number;
  percent: number | null;
}

const rowHeight = 74;

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
  const rows = meetings.map((meeting, index) =>
    drawRow(meeting, check, scale, 4 + index * rowHeight, { unit, digits }),
  );
  const y = 4 + meetings.length * rowHeight;
  return {
    id,
    title,
    description,
    svg: drawing(
      { id, title, description, kind: 'cultivar-seasons' },
      { height: y + axisHeight(unit) },
      ...rows,
      valueAxes(scale, y, unit),
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
): string {
  const mark = top + 54;
  const share = percent === null ? '' : `, ${say('{percent} of it', { percent: formatPercent(percent, 0) })}`;
  return element(
    'g',
    { class: 'row' },
    gridlines(scale, mark - 12, mark + 12),
    label(season, { class: 'heading', x: 0, y: top + 14 }),
    quantityLabel('', formatQuantity(own, unit, digits), '', {
      class: 'strong',
      x: '100%',
      y: top + 14,
      'text-anchor': 'end',
    }),
    quantityLabel(`${checkName} `, formatQuantity(check, unit, digits), share, {
      class: 'tick',
      x: 0,
      y: top + 31,
    }),
    element('line', { class: 'leader', x1: scale.at(check), x2: scale.at(own), y1: mark, y2: mark }),
    placed(scale.at(check), mark, element('path', { class: 'mean', d: 'M0-5L5 4H-5Z' })),
    element('circle', { class: 'dot', cx: scale.at(own), cy: mark, r: 4.5 }),
  );
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
