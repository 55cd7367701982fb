import type { Amounts } from './amounts.ts';
import type { Balance } from './balance.ts';
import { type EcEstimate, ecRange } from './ec-estimates.ts';
import { stockWarnings } from './stock-warnings.ts';

/** Cations and anions may differ by this many percent of half their sum before it is worth a warning. */
const balanceTolerance = 10;

/** A measured EC may lie this far outside the estimates. */
const ecTolerance = 0.3;

/** What to look out for in a recipe, in a grower's words. */
export function warningsOf(
  amounts: Amounts,
  balance: Balance,
  estimates: readonly EcEstimate[],
  options: { stockRatio: number | undefined; measuredEc: number | undefined },
): string[] {
  return [
    ...amounts.remarks.map(capital),
    ...stockWarnings(amounts.salts, options.stockRatio),
    ...balanceWarning(balance),
    ...(options.measuredEc === undefined ? [] : ecWarning(estimates, options.measuredEc)),
  ];
}

function balanceWarning({ cations, anions, differencePercent }: Balance): string[] {
  if (differencePercent === null || Math.abs(differencePercent) <= balanceTolerance) return [];
  const more = differencePercent > 0 ? 'more cations than anions' : 'more anions than cations';
  return [
    `The labels add up to ${more}: ${cations.value!.toFixed(1)} against ${anions.value!.toFixed(1)} meq/L. In a real ` +
      `solution they are equal, so an amount, a label's figure or part of the water's analysis is wrong or missing.`,
  ];
}

function ecWarning(estimates: readonly EcEstimate[], measured: number): string[] {
  const range = ecRange(estimates);
  if (!range) return [];
  const { lowest, highest } = range;
  if (measured >= lowest * (1 - ecTolerance) && measured <= highest * (1 + ecTolerance)) return [];
  const side = measured < lowest ? 'below' : 'above';
  return [
    `The measured EC of ${String(measured)} mS/cm lies far ${side} what the recipe should give ` +
      `(${lowest.toFixed(2)} to ${highest.toFixed(2)}). Check the weights, the volume of water and the meter.`,
  ];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
