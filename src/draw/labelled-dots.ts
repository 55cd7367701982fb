import { type FluidScale } from './fluid.ts';
import { element, label } from './svg.ts';
import { textWidth } from './text-width.ts';

/** A dot with the word that is written beside it; without a word where there are too many. */
export interface LabelledDot {
  value: number;
  text: string;
}

const radius = 4.5;
const size = 12;
const lineHeight = 17;

/**
 * Dots above a base line with their words beside them, none over another at the given width or any wider:
 * each takes the lowest line where it fits. Words stand to the left of dots on the right half.
 *
 * @param width px of the narrowest place that it is drawn for
 * @returns the drawing from `baseline` upwards, and its height
 */
export function labelledDots(
  dots: readonly LabelledDot[],
  scale: FluidScale,
  baseline: number,
  width: number,
): { svg: string; height: number } {
  const lines: [number, number][][] = [];
  const drawn = [...dots]
    .sort((a, b) => a.value - b.value)
    .map(({ value, text }) => {
      const at = (scale.percent(value) / 100) * width;
      const reach = text === '' ? 0 : textWidth(text, size) + radius + 6;
      const turned = scale.percent(value) > 50;
      const [from, to] = turned ? [at - reach, at + radius + 1] : [at - radius - 1, at + reach];
      let line = lines.findIndex((taken) => taken.every(([start, end]) => to < start || from > end));
      if (line < 0) line = lines.push([]) - 1;
      lines[line]!.push([from, to]);
      const y = baseline - 8 - line * lineHeight;
      const words = label(text, {
        class: 'tick',
        x: scale.at(value),
        dx: turned ? -radius - 4 : radius + 4,
        y: y + 4,
        'text-anchor': turned ? 'end' : 'start',
      });
      return (
        element('circle', { class: 'dot', cx: scale.at(value), cy: y, r: radius }) +
        (text === '' ? '' : words)
      );
    });
  return { svg: drawn.join(''), height: lines.length * lineHeight };
}
