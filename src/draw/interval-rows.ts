import type { InBothUnits } from '../compute/format/format-quantity.ts';
import { bothUnits } from './both-units.ts';
import { type FluidScale, fluidScale, niceDomain, placed } from './fluid.ts';
import { intervalMark } from './interval-mark.ts';
import { intervalWords } from './interval-words.ts';
import { stackedRows } from './stacked-rows.ts';
import { type About, element, escapeText, label } from './svg.ts';
import type { Interval } from './treatment-rows.ts';
import { narrow } from './grid-map.ts';
import { gridlines } from './value-axis.ts';
import { textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/** One estimate with its interval and the words beside it. */
export interface IntervalRow extends Interval {
  name: string;
  estimate: InBothUnits;
  limits: InBothUnits;
  /** Such as "p = 0.018". */
  aside: string;
  /** A heading above the row where another family of comparisons begins. */
  section: string | null;
}

const rowHeight = 78;
const sectionHeight = 28;

/** The words beside an estimate, or on a line of their own where both units leave them no room. */
function besideEstimate({ estimate, aside }: IntervalRow): [beside: string, below: string] {
  if (aside === '') return ['', ''];
  const whole = `${estimate.metric} · ${estimate.us ?? ''}, ${aside}`;
  return textWidth(whole, 13) <= narrow ? [`, ${aside}`, ''] : ['', aside];
}

/** Draws estimates one below the other against a line at zero, in metric with the US unit below. */
export function intervalRows(about: About, rows: readonly IntervalRow[], unit: string): string {
  const scale = fluidScale(niceDomain([0, ...rows.flatMap(({ lower, upper }) => [lower, upper])]), [5, 91]);
  return stackedRows(
    about,
    rows.map((row) => (top) => drawRow(row, scale, top, unit)),
    { scale, unit },
  );
}

function drawRow(
  row: IntervalRow,
  scale: FluidScale,
  top: number,
  unit: string,
): { svg: string; height: number } {
  const y = row.section === null ? top : top + sectionHeight;
  const section = row.section === null ? '' : label(row.section, { class: 'aside', x: 0, y: top + 16 });
  const name = wrapText(row.name, narrow, 14, true);
  const after = y + 14 + (name.length - 1) * 17;
  const [estimate, aside] = besideEstimate(row);
  const asideLine = aside === '' ? 0 : 17;
  const mark = after + asideLine + 47;
  const drawn = element(
    'g',
    { class: 'row' },
    ...name.map((text, index) => label(text, { class: 'heading', x: 0, y: y + 14 + index * 17 })),
    element('text', { x: 0, y: after + 17 }, bothUnits(row.estimate), escapeText(estimate)),
    aside === '' ? '' : label(aside, { x: 0, y: after + 34 }),
    element(
      'text',
      { class: 'tick', x: 0, y: after + asideLine + 33 },
      escapeText(intervalWords(row.limits)),
      bothUnits(row.limits),
    ),
    gridlines(scale, mark - 9, mark + 9, unit),
    element('line', { class: 'zero', x1: scale.at(0), x2: scale.at(0), y1: mark - 12, y2: mark + 12 }),
    intervalMark(scale, row, mark),
    placed(scale.at(row.centre), mark, element('path', { class: 'estimate', d: 'M0-6L6 0L0 6L-6 0Z' })),
  );
  return { svg: section + drawn, height: after + asideLine + rowHeight - 14 - top };
}
