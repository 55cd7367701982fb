import type { CalculatorState } from './calculator-state.ts';
import { unitSizes } from './read-inputs.ts';
import { readNumber } from './read-number.ts';

const figures = [5, 6, 7, 8, 9];
/** Half a unit of the fifth figure, at its smallest share of a number. */
const halfOfTheFifth = 5e-6;

/** The same amounts and volumes in other units: what was typed and is understood is turned into them. */
export function changeUnits(state: CalculatorState, to: { per: string; unit: string }): CalculatorState {
  const amount = unitSizes.amount(state.per) / unitSizes.amount(to.per);
  const volume = unitSizes.volume(state.unit) / unitSizes.volume(to.unit);
  return {
    ...state,
    ...to,
    salts: state.salts.map((salt) => ({ ...salt, amount: times(salt.amount, amount) })),
    volume: times(state.volume, volume),
    bottle: times(state.bottle, volume),
  };
}

/** As few figures, from five on, as lead back to five figures that were typed. */
function times(typed: string, factor: number): string {
  const read = readNumber(typed);
  if (factor === 1 || !('value' in read)) return typed;
  const exact = read.value * factor;
  const rounded = figures
    .map((count) => Number(exact.toPrecision(count)))
    .find((value) => Math.abs(value - exact) <= halfOfTheFifth * exact);
  // Never with an exponent, which the field would refuse.
  return (rounded ?? exact).toFixed(12).replace(/\.?0+$/, '');
}
