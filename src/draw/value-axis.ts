import { tickStep, ticks } from 'd3-array';
import { digitsOfValue } from '../compute/format/digits-of-value.ts';
import { formatNumber } from '../compute/format/format-number.ts';
import { unitName } from '../compute/format/unit-name.ts';
import { usUnit } from '../compute/format/us-unit.ts';
import { headed } from './columns-in-both.ts';
import type { FluidScale } from './fluid.ts';
import { narrow } from './grid-map.ts';
import { type Attributes, element, label } from './svg.ts';
import { textWidth } from './text-width.ts';

/** As the style sheet has it, in px. */
const tickSize = 12;

/** How far below the metric axis that in the US unit stands, in px. */
const toUsAxis = 26;

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
 * unit where it was chosen, which reach down to it. Where both axes are shown, the lines are the metric ones.
 */
export function gridlines(scale: FluidScale, y1: number, y2: number, unit: string, count = 5): string {
  const line = (value: number, to: number) =>
    element('line', { class: 'gridline', x1: scale.at(value), x2: scale.at(value), y1, y2: to });
  const metric = roundTicks(scale.domain, count).map(({ value }) => line(value, y2));
  const inUs = usTicks(scale.domain, unit, count)?.map(({ value }) => line(value, y2 + toUsAxis));
  if (inUs === undefined) return metric.join('');
  return element('g', { class: 'metric' }, ...metric) + element('g', { class: 'when-chosen' }, ...inUs);
}

/**
 * What stands at the levels of an upright axis: those of the metric unit, or of the US one where it was chosen.
 * There is one label's room beside a drawing, so both are never shown at once.
 *
 * @param draw one level: its value in the metric unit, and its number as it is to be written
 */
export function uprightLevels(
  domain: readonly [number, number],
  unit: string,
  count: number,
  draw: (value: number, text: string) => string,
): string {
  const drawn = (marks: ReturnType<typeof roundTicks>) => marks.map(({ value, text }) => draw(value, text));
  const metric = drawn(roundTicks(domain, count));
  const inUs = usTicks(domain, unit, count);
  if (inUs === null) return metric.join('');
  return (
    element('g', { class: 'metric' }, ...metric) + element('g', { class: 'when-chosen' }, ...drawn(inUs))
  );
}

/** The words that stand above an upright axis, with its unit: the metric, or the US one where it was chosen. */
export function uprightLabel(words: string, unit: string, attributes: Attributes): string {
  const line = (kind: string | undefined, written: string) =>
    label(headed(words, written), { ...attributes, class: ['strong', kind].filter(Boolean).join(' ') });
  const us = usUnit(unit);
  if (us === null) return line(undefined, unitName(unit));
  return line('metric', unitName(unit)) + line('when-chosen', us.unit);
}

/** Round numbers in the US unit, with their places in the metric one; null where the trade has no US unit. */
function usTicks(
  [from, to]: readonly [number, number],
  unit: string,
  count: number,
): ReturnType<typeof roundTicks> | null {
  const us = usUnit(unit);
  if (us === null) return null;
  return roundTicks([from * us.factor + us.offset, to * us.factor + us.offset], count).map(
    ({ value, text }) => ({
      value: (value - us.offset) / us.factor,
      text,
    }),
  );
}

/** A metric axis and, below it, one in the US unit with round numbers of its own. */
export function valueAxes(scale: FluidScale, y: number, unit: string, count = 5): string {
  const us = usUnit(unit);
  const metric = axis(scale, y, 'metric', roundTicks(scale.domain, count), unitName(unit));
  if (us === null) return metric.replace(' metric"', '"');
  return metric + axis(scale, y + toUsAxis, 'us', usTicks(scale.domain, unit, count) ?? [], us.unit);
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
