import type { NumberRead } from './number-typed.ts';
import type { Fact } from './fact.ts';
import type { TypedQuantity } from './typed-quantity.ts';

/** Room for the last bit of a conversion. */
const sliver = 1e-9;

/**
 * True where a fact rounds to what was typed, at the digits typed, in the unit typed. A size is compared and not a
 * sign, since "14 g less" is typed without one. A number said to be about right is held to its last digit that is
 * no zero ("about 150 g" to 10 g, "about 145 g" to 5 g); a bound must have a fact on its right side within as much.
 */
export function bearsOut({ value }: Pick<Fact, 'value'>, quantity: TypedQuantity): boolean {
  const held = Math.abs(value) / quantity.factor;
  return quantity.numbers.some((number) => fits(held, number, quantity.manner));
}

function fits(held: number, { value, step }: NumberRead, manner: TypedQuantity['manner']): boolean {
  const within = (size: number): boolean => Math.abs(held - value) <= (size / 2) * (1 + sliver) + sliver;
  const coarse = step * coarseness(Math.round(value / step));
  const room = (step / 2) * sliver + sliver;
  switch (manner) {
    case 'about':
      return within(coarse);
    case 'over':
      return held >= value - room && held <= value + coarse + room;
    case 'under':
      return held <= value + room && held >= value - coarse - room;
    default:
      return within(step);
  }
}

/** How many of the last digit's steps a number said to be about right is told to. */
function coarseness(steps: number): number {
  if (steps === 0) return 1;
  return [100, 10, 5].find((size) => steps % size === 0) ?? 1;
}

/** The fact nearest to what was typed. */
export function nearestFact(facts: readonly Fact[], quantity: TypedQuantity): Fact | null {
  const away = ({ value }: Fact): number =>
    Math.min(...quantity.numbers.map((number) => Math.abs(Math.abs(value) / quantity.factor - number.value)));
  return facts.reduce<Fact | null>(
    (best, fact) => (best === null || away(fact) < away(best) - sliver ? fact : best),
    null,
  );
}
