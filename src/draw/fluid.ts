import { scaleLinear } from 'd3-scale';
import { element, round } from './svg.ts';

/** A scale to the width of a fluid drawing, which is known only where it is shown. */
export interface FluidScale {
  domain: readonly [number, number];
  /** Percent of the width. */
  percent(value: number): number;
  /** The same as an attribute's value. */
  at(value: number): string;
}

/** Maps a domain to a part of the width, in percent. */
export function fluidScale(domain: readonly [number, number], range: readonly [number, number]): FluidScale {
  const scale = scaleLinear().domain(domain).range(range);
  const percent = (value: number) => round(scale(value));
  return { domain, percent, at: (value) => `${String(percent(value))}%` };
}

/** Places a piece that has a shape of its own at a share of the width; within it, 0 is that place. */
export function placed(x: string, y: number, ...children: readonly string[]): string {
  return element('svg', { x, y, width: 1, height: 1, overflow: 'visible' }, ...children);
}

/** A domain with round ends around the values, never empty. */
export function niceDomain(values: readonly number[], count = 5): readonly [number, number] {
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const spread = highest > lowest ? [lowest, highest] : [lowest - 1, highest + 1];
  const [from, to] = scaleLinear().domain(spread).nice(count).domain();
  return [from!, to!];
}
