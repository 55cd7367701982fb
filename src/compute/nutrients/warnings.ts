import { say } from '../../model/say.ts';
import type { Amounts } from './amounts.ts';
import type { Balance } from './balance.ts';
import { type EcEstimate, type EcRange, ecRange } from './ec-estimates.ts';
import type { Warning } from './recipe.ts';
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
): Warning[] {
  return [
    ...amounts.remarks.map((remark) => ({ ...remark, text: capital(remark.text) })),
    ...stockWarnings(amounts.salts, options.stockRatio),
    ...balanceWarning(balance),
    ...(options.measuredEc === undefined ? [] : ecWarning(estimates, options.measuredEc)),
  ];
}

function balanceWarning({ cations, anions, differencePercent }: Balance): Warning[] {
  if (differencePercent === null || Math.abs(differencePercent) <= balanceTolerance) return [];
  const values = { cations: cations.value!.toFixed(1), anions: anions.value!.toFixed(1) };
  const text =
    differencePercent > 0
      ? say(
          "The labels add up to more cations than anions: {cations} against {anions} meq/L. In a real solution they are equal, so an amount, a label's figure or part of the water's analysis is wrong or missing.",
          values,
        )
      : say(
          "The labels add up to more anions than cations: {cations} against {anions} meq/L. In a real solution they are equal, so an amount, a label's figure or part of the water's analysis is wrong or missing.",
          values,
        );
  return [{ kind: 'charges', text, salt: null }];
}

function ecWarning(estimates: readonly EcEstimate[], measured: number): Warning[] {
  const range = ecRange(estimates);
  if (!range) return [];
  if (agreesWith(range, measured)) return [];
  const { lowest, highest } = range;
  const values = { measured, lowest: lowest.toFixed(2), highest: highest.toFixed(2) };
  const text =
    measured < lowest
      ? say(
          'The measured EC of {measured} mS/cm lies far below what the recipe should give ({lowest} to {highest}). Check the weights, the volume of water and the meter.',
          values,
        )
      : say(
          'The measured EC of {measured} mS/cm lies far above what the recipe should give ({lowest} to {highest}). Check the weights, the volume of water and the meter.',
          values,
        );
  return [{ kind: 'measured EC', text, salt: null }];
}

/** True where a measured EC lies within the estimates or at most 30 % outside them, all in mS/cm. */
export function agreesWith({ lowest, highest }: EcRange, measured: number): boolean {
  return measured >= lowest * (1 - ecTolerance) && measured <= highest * (1 + ecTolerance);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
