import { tickStep, ticks } from 'd3-array';
import { digitsOfValue } from '../compute/format/digits-of-value.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import type { FluidScale } from './fluid.ts';
import { narrow } from './grid-map.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';

/** As the style sheet has it, in px. */
const tickSize = 12;

/** The height of the axes below a drawing, in px: one line, or two where the trade has a US unit. */
export function axisHeight(unit: string): number {
  return usUnit(unit) === null ? 24 : 50;
}

/** Round numbers within a domain, with as few decimals as tell them apart. */
export function roundTicks(
  domain: readonly [number, number],
  count: number,
): { value: number; text: string }[] {
  const [from, to] = domain;
  const digits = digitsOfValue(Number(tickStep(from, to, count).toPrecision(6)));
  return ticks(from, to, count).map((value) => ({ value, text: formatNumber(value, digits) }));
}

/**
 * Upright lines through the drawing at the ticks, from y1 to y2: those of the metric axis, or of that in the US
 * unit where it was chosen. Where both axes are shown, the lines are the metric ones.
 */
export function gridlines(scale: FluidScale, y1: number, y2: number, unit: string, count = 5): string {
  const line = ({ value }: { value: number }) =>
    element('line', { class: 'gridline', x1: scale.at(value), x2: scale.at(value), y1, y2 });
  const metric = roundTicks(scale.domain, count).map(line);
  const inUs = usTicks(scale, unit, count)?.map(line);
  if (inUs === undefined) return metric.join('');
  return element('g', { class: 'metric' }, ...metric) + element('g', { class: 'when-chosen' }, ...inUs);
}

/** Round numbers in the US unit, with their places in the metric one; null where the trade has no US unit. */
function usTicks(scale: FluidScale, unit: string, count: number): ReturnType<typeof roundTicks> | null {
  const us = usUnit(unit);
  if (us === null) return null;
  const [from, to] = scale.domain;
  const domain: [number, number] = [from * us.factor + us.offset, to * us.factor + us.offset];
  return roundTicks(domain, count).map(({ value, text }) => ({
    value: (value - us.offset) / us.factor,
    text,
  }));
}

/** A metric axis and, below it, one in the US unit with round numbers of its own. */
export function valueAxes(scale: FluidScale, y: number, unit: string, count = 5): string {
  const us = usUnit(unit);
  const metric = axis(scale, y, 'metric', roundTicks(scale.domain, count), unitName(unit));
  if (us === null) return metric.replace(' metric"', '"');
  return metric + axis(scale, y + 26, 'us', usTicks(scale, unit, count) ?? [], us.unit);
}

function axis(
  scale: FluidScale,
  y: number,
  kind: 'metric' | 'us',
  marks: readonly { value: number; text: string }[],
  unit: string,
): string {
  const [from, to] = scale.domain;
  return element(
    'g',
    { class: `axis ${kind}` },
    element('line', { class: 'baseline', x1: scale.at(from), x2: scale.at(to), y1: y, y2: y }),
    ...marks.map(({ value, text }, index) => {
      const x = scale.at(value);
      const last = index === marks.length - 1;
      const written = last && unit !== '' ? `${text}\u00A0${unit}` : text;
      const tick = element('line', { class: 'baseline', x1: x, x2: x, y1: y, y2: y + 5 });
      if (!last && meetsTheLast(value, text)) return tick;
      const dx = inward(value, written);
      return tick + label(written, { class: 'tick', x, dx, y: y + 17, 'text-anchor': 'middle' });
    }),
  );

  /** How far a label is moved so that it stays within the drawing where that is narrowest. */
  function inward(value: number, written: string): number | undefined {
    const half = textWidth(written, tickSize) / 2;
    const at = (scale.percent(value) / 100) * narrow;
    const moved = Math.max(0, half - at) - Math.max(0, at + half - narrow);
    return moved === 0 ? undefined : moved;
  }

  /** The last label is as long as its unit: in a narrow place it may reach over the one before it. */
  function meetsTheLast(value: number, text: string): boolean {
    const { value: end, text: endText } = marks.at(-1)!;
    const written = `${endText}\u00A0${unit}`;
    const moved = (inward(end, written) ?? 0) - (inward(value, text) ?? 0);
    const apart = ((scale.percent(end) - scale.percent(value)) / 100) * narrow + moved;
    return apart < (textWidth(text, tickSize) + textWidth(written, tickSize)) / 2 + 2;
  }
}
