import { formatDate } from '../compute/format/format-date.ts';
import { formatBare, formatQuantity } from '../compute/format/format-quantity.ts';
import { squareMetres } from '../compute/growing-area.ts';
import { tell } from '../compute/words/tell.ts';
import { joinWords } from '../compute/words/words.ts';
import type { Figure } from '../model/figure.ts';
import type { Container, Trial } from '../model/trial.ts';
import { cellsInBoth, columnsInBoth } from './columns-in-both.ts';
import { cutLines, cutsOf } from './cut-lines.ts';
import { dayScale, type DayScale, monthStarts } from './day-scale.ts';
import { type Line, linePanels, lineStyle } from './readings-panels.ts';
import { inParts } from './stacked-rows.ts';
import { element, label } from './svg.ts';
import { say } from '../model/say.ts';

const id = 'water-over-time';

/** A level read to 2 mm over half a square metre is uncertain by 1 L; a tenth is the finest worth printing. */
const digits = 1;

/**
 * Water that each container has used up to each reading of its level, in litres: the fall of the level over
 * the inside area, with what was added and rained in and less what ran over. Null where no container's inside
 * and two levels are known.
 */
export function drawWaterOverTime(trial: Trial): Figure | null {
  const lines = trial.metadata.containers
    .map((container, index): Line => ({
      container: container.id,
      style: lineStyle(index),
      points: waterUsedUpTo(container, trial),
    }))
    .filter(({ points }) => points.length > 1);
  if (lines.length === 0) return null;
  const scale = dayScale(
    [...lines.flatMap(({ points }) => points.map(({ date }) => date)), ...cutsOf(trial)],
    [7, 84],
  );
  const title = say('Water used, from the first reading on');
  const said = lines.map(({ container, points }) => {
    const used = formatQuantity(points.at(-1)!.value, 'L', digits);
    return tell('{container} {used} by {date}', {
      container,
      used,
      date: formatDate(points.at(-1)!.date),
    });
  });
  const description = [...joinWords(said, '; '), '.'];
  const panels = linePanels(lines, 'water', { words: say('water used'), unit: 'L' }, scale);
  return {
    id,
    title,
    description,
    svg: inParts({ id, title, description, kind: id }, panels, {
      height: 20,
      draw: (foot) => [...cutLines(trial, scale, 34, foot - 8, foot - 14), drawMonths(scale, foot)].join(''),
    }),
    table: {
      caption: title,
      columns: [
        { heading: say('Container'), numeric: false },
        { heading: say('Day'), numeric: false },
        ...columnsInBoth(say('Used so far'), 'L'),
      ],
      rows: lines.flatMap(({ container, points }) =>
        points.map(({ date, value }) => {
          const used = cellsInBoth(formatBare(value, 'L', digits), 'L');
          return [container, formatDate(date), ...used];
        }),
      ),
    },
  };
}

function drawMonths(scale: DayScale, foot: number): string {
  const ticks = monthStarts(scale).map(
    ({ date, name }) =>
      element('line', {
        class: 'baseline',
        x1: scale.at(date),
        x2: scale.at(date),
        y1: foot - 8,
        y2: foot - 2,
      }) + label(name, { class: 'tick', x: scale.at(date), y: foot + 12, 'text-anchor': 'middle' }),
  );
  return ticks.join('');
}

/** Litres used by a container up to each of its readings of the level; empty where its inside is not known. */
export function waterUsedUpTo(container: Container, trial: Trial): { date: string; value: number }[] {
  if (!container.inside) return [];
  const litresInCentimetre = squareMetres(container.inside) * 10;
  const readings = trial.readings
    .filter((reading) => reading.container === container.id)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.line - b.line));
  const points: { date: string; value: number }[] = [];
  let firstLevel: number | null = null;
  let poured = 0;
  for (const { date, level, added, rain, overflow } of readings) {
    if (firstLevel !== null) poured += (rain ?? 0) - (overflow ?? 0);
    if (level !== null) {
      firstLevel ??= level;
      points.push({ date, value: litresInCentimetre * (firstLevel - level) + poured });
    }
    // What this row added was poured after its level was read.
    if (firstLevel !== null) poured += added ?? 0;
  }
  return points;
}
