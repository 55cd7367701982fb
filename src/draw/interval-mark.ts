import type { FluidScale } from './fluid.ts';
import { element } from './svg.ts';
import type { Interval } from './treatment-rows.ts';

/** A level line from one limit to the other with upright ends and, where asked, a mark at its centre. */
export function intervalMark(
  scale: FluidScale,
  { centre, lower, upper }: Interval,
  y: number,
  marked = false,
): string {
  const end = (limit: number) =>
    element('line', { class: 'interval', x1: scale.at(limit), x2: scale.at(limit), y1: y - 5, y2: y + 5 });
  return (
    element('line', { class: 'interval', x1: scale.at(lower), x2: scale.at(upper), y1: y, y2: y }) +
    end(lower) +
    end(upper) +
    (marked ? end(centre) : '')
  );
}
