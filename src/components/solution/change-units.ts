import type { CalculatorState } from './calculator-state.ts';
import { unitSizes } from './read-inputs.ts';
import { readNumber } from './read-number.ts';

/** The same amounts and volumes in other units: what was typed and is understood is turned into them, to six figures. */
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

function times(typed: string, factor: number): string {
  const read = readNumber(typed);
  if (factor === 1 || !('value' in read)) return typed;
  // Never with an exponent, which the field would refuse.
  return Number((read.value * factor).toPrecision(6))
    .toFixed(9)
    .replace(/\.?0+$/, '');
}
