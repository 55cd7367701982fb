import { say } from '../../model/say.ts';
import { type Nutrient, nutrientNames } from '../../model/nutrient-keys.ts';
import type { Findings } from '../../model/findings.ts';
import { type Amounts, amountsOf } from './amounts.ts';
import { type Balance, balanceOf } from './balance.ts';
import { byNutrient } from './by-nutrient.ts';
import { type EcEstimate, ecEstimates } from './ec-estimates.ts';
import { type IonId, ionIds, milligramsPerMillimole } from './ions.ts';
import { type Ratios, ratiosOf } from './ratios.ts';
import { reckonedForms } from './reckoned-forms.ts';
import type { Recipe, Warning } from './recipe.ts';
import { labelDoesNotGive } from './salt-analysis.ts';
import { type Stock, stockWeights } from './stock-weights.ts';
import { warningsOf } from './warnings.ts';

export interface Solution {
  /** The salts with their analyses, the water, and mg/L of everything. */
  amounts: Amounts;
  /** mmol/L; null where mg/L is not known. */
  millimoles: Record<Nutrient, number | null>;
  /** meq/L of every ion, their sums and difference. */
  balance: Balance;
  ratios: Ratios;
  ec: readonly EcEstimate[];
  /** Grams in a litre of each stock; empty where the recipe gives no ratio. */
  stocks: readonly Stock[];
  warnings: readonly Warning[];
  /** Why numbers are null; empty where none is. */
  reason: string;
}

export interface SolutionOptions {
  /** EC measured in the fresh solution at the recipe's strength, mS/cm at 25 C. */
  measuredEc?: number;
}

/** Published whatever the recipe holds; the rest only where something in the recipe gives or names it. */
const always: readonly Nutrient[] = nutrientNames.slice(0, nutrientNames.indexOf('Cl'));

/** The nutrients that are published of a recipe, in their order. */
export function listedNutrients({ total }: Pick<Amounts, 'total'>): Nutrient[] {
  return nutrientNames.filter((name) => always.includes(name) || total[name].value !== 0);
}

/** The ions that a recipe holds, or may hold, in their order. */
export function listedIons({ meq }: Pick<Balance, 'meq'>): IonId[] {
  return ionIds.filter((ion) => meq[ion].value !== 0);
}

/**
 * All that a recipe amounts to, for the pages and for the calculator: the recipe as written, at full strength.
 * A factor of the trial that scales it (half strength, double strength) scales these numbers alike.
 */
export function solutionOf(recipe: Recipe, options: SolutionOptions = {}): Solution {
  const amounts = amountsOf(recipe);
  const balance = balanceOf(amounts);
  const ec = estimatesFor(amounts, balance);
  const ratio = recipe.stock_ratio;
  return {
    amounts,
    millimoles: byNutrient((nutrient) => {
      const { value } = amounts.total[nutrient];
      return value === null ? null : value / milligramsPerMillimole(nutrient);
    }),
    balance,
    ratios: ratiosOf(amounts.total, balance),
    ec,
    stocks: ratio === undefined ? [] : stockWeights(amounts.salts, ratio),
    warnings: warningsOf(amounts, balance, ec, { stockRatio: ratio, measuredEc: options.measuredEc }),
    reason: reasonOf(amounts, balance),
  };
}

/**
 * What a trial's recipe amounts to, for `findings.nutrients`: mg/L of each nutrient, sums of cations and anions in
 * meq/L, EC by several formulas, warnings. This is the recipe as written; a factor such as `strength` that scales it
 * for some containers is not applied.
 *
 * What a label does not tell is null, with the reason: see `saltAnalysis` for what counts as told. Cl, Na, Si,
 * Co, Ni and HCO3 are listed only where a salt or the water gives them.
 */
export function nutrientsOf(
  nutrients: Recipe,
  options: SolutionOptions = {},
): NonNullable<Findings['nutrients']> {
  const { amounts, balance, ec, millimoles, warnings, reason } = solutionOf(nutrients, options);
  const listed = listedNutrients(amounts);
  return {
    mg_per_L: Object.fromEntries(listed.map((name) => [name, amounts.total[name].value])),
    mmol_per_L: Object.fromEntries(listed.map((name) => [name, millimoles[name]])),
    meq_per_L: Object.fromEntries(listedIons(balance).map((ion) => [ion, balance.meq[ion].value])),
    cations_meq: balance.cations.value,
    anions_meq: balance.anions.value,
    ec_estimates: [...ec],
    warnings: warnings.map(({ text }) => text),
    reason,
  };
}

/** Estimates from the ions as known, or with the forms of nitrogen reckoned from neutrality, said so. */
function estimatesFor(amounts: Amounts, balance: Balance): EcEstimate[] {
  const estimates = ecEstimates(balance);
  const reckoned = balance.cations.value === null ? reckonedForms(amounts) : null;
  if (!reckoned) return estimates;
  return ecEstimates(balanceOf(reckoned)).map(({ formula, value }) => ({
    formula: say('{formula}; ammonium reckoned from the balance of charges', { formula }),
    value,
  }));
}

function reasonOf({ total, salts }: Amounts, { cations, anions }: Balance): string {
  const amounts = nutrientNames
    .filter((name) => total[name].value === null)
    .map((name) => total[name].reason);
  const reasons = [...amounts, cations.reason, anions.reason].flatMap((reason) => reason.split('; '));
  const said = toldTogether(
    [...new Set(reasons)].filter((reason) => reason !== ''),
    salts,
  );
  return said.map((reason) => `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`).join(' ');
}

/** Reasons that differ only in the nutrient that one salt's label does not give, as one. */
function toldTogether(reasons: readonly string[], salts: Amounts['salts']): string[] {
  let left = [...reasons];
  for (const { name } of salts) {
    const missing = nutrientNames.filter((nutrient) => left.includes(labelDoesNotGive(name, nutrient)));
    const [first, ...rest] = missing.map((nutrient) => labelDoesNotGive(name, nutrient));
    if (first === undefined) continue;
    left = left
      .filter((reason) => !rest.includes(reason))
      .map((reason) => (reason === first ? labelDoesNotGive(name, missing.join(', ')) : reason));
  }
  return left;
}
