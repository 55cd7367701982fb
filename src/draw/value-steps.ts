import { ticks } from 'd3-array';
import { scaleThreshold } from 'd3-scale';

/** How many steps the ramp of the style sheet has, 1 the least. */
export const rampSteps = 7;

/** A scale in steps with round boundaries. */
export interface ValueSteps {
  /** Boundaries between the steps in use, ascending. */
  boundaries: readonly number[];
  /** The steps of the ramp in use, one more than boundaries. */
  steps: readonly number[];
  /** The ramp's step for a value; a value on a boundary belongs to the higher step. */
  stepOf(value: number): number;
}

/** Steps for the given values, at most as many as the ramp has, spread evenly over it. */
export function valueSteps(values: readonly number[]): ValueSteps {
  const lowest = Math.min(...values);
  const highest = Math.max(...values);
  let boundaries: number[] = [];
  for (let count = rampSteps; count >= 1 && highest > lowest; count -= 1) {
    boundaries = ticks(lowest, highest, count).filter((boundary) => boundary > lowest && boundary <= highest);
    if (boundaries.length < rampSteps) break;
  }
  boundaries = boundaries.slice(0, rampSteps - 1);
  const steps =
    boundaries.length === 0
      ? [Math.ceil(rampSteps / 2)]
      : [...boundaries, 0].map((_, index) => 1 + Math.round((index * (rampSteps - 1)) / boundaries.length));
  const scale = scaleThreshold<number, number>().domain(boundaries).range(steps);
  return { boundaries, steps, stepOf: (value) => scale(value) };
}
