import { say } from '../../model/say.ts';
import type { Nutrient } from '../../model/nutrient-keys.ts';
import { sum } from '../../statistics/sum.ts';
import type { Amounts } from './amounts.ts';
import { byIon, type IonId, ionIds, ions, milligramsPerMillimole } from './ions.ts';
import { reactsByName } from './held-by-name.ts';
import { type Amount, known, unknown } from './recipe.ts';

export interface Balance {
  /** meq/L of each ion, without sign; null where its nutrient is not known. */
  meq: Record<IonId, Amount>;
  /** meq/L; null where an ion among them is not known. */
  cations: Amount;
  /** meq/L; null where an ion among them is not known. */
  anions: Amount;
  /** Cations less anions, in percent of half their sum; null where either is not known or both are 0. */
  differencePercent: number | null;
}

/** Beyond this many meq/L and this share, a water's analysis that names only one side lacks the other. */
const waterTolerance = { meq: 0.2, share: 0.1 };

/**
 * Milliequivalents per litre of every ion, and their sums. Hydrogen ions first neutralise hydroxide, then
 * bicarbonate (which leaves as carbon dioxide), so that neither is counted twice.
 *
 * Natural water carries as many anions as cations. Where the source water's analysis names one side only (Ca and
 * Mg, but no bicarbonate), the other side's sum is unknown, not short.
 */
export function balanceOf({ salts, water, total }: Amounts): Balance {
  const meq = byIon((ion): Amount => {
    const { nutrient, charge } = ions[ion];
    if (nutrient !== null)
      return scaled(total[nutrient], Math.abs(charge) / milligramsPerMillimole(nutrient));
    const used = salts.filter(({ gramsPerLitre }) => gramsPerLitre > 0);
    const open = used.find(({ analysis, name }) => !analysis.formula && reactsByName(name) === ion);
    if (open)
      return unknown(
        charge > 0
          ? say('{salt}: without its formula, the acid in it is unknown', { salt: open.name })
          : say('{salt}: without its formula, the alkali in it is unknown', { salt: open.name }),
      );
    const moles = used.map(({ analysis, gramsPerLitre }) => 10 * analysis.otherIons[ion] * gramsPerLitre);
    return known(sum(moles) * Math.abs(charge));
  });
  neutralise(meq, 'OH');
  neutralise(meq, 'HCO3');
  const lacking = sideLackingInWater(water);
  const cations = sideOf(meq, 1, lacking === 'cations');
  const anions = sideOf(meq, -1, lacking === 'anions');
  return { meq, cations, anions, differencePercent: difference(cations.value, anions.value) };
}

function scaled({ value, atLeast, reason }: Amount, factor: number): Amount {
  return { value: value === null ? null : value * factor, atLeast: atLeast * factor, reason };
}

/** Takes hydrogen ions and a base off each other, as far as both go. */
function neutralise(meq: Record<IonId, Amount>, base: 'OH' | 'HCO3'): void {
  const acid = meq.H.value;
  const alkali = meq[base].value;
  if (acid === null || alkali === null) return;
  const both = Math.min(acid, alkali);
  if (both === 0) return;
  meq.H = known(acid - both);
  meq[base] = known(alkali - both);
}

function sideOf(meq: Readonly<Record<IonId, Amount>>, sign: 1 | -1, lackingInWater: boolean): Amount {
  const amounts = ionIds.filter((ion) => Math.sign(ions[ion].charge) === sign).map((ion) => meq[ion]);
  const atLeast = sum(amounts.map((amount) => amount.atLeast));
  const reasons = amounts.filter(({ value }) => value === null).map(({ reason }) => reason);
  if (lackingInWater)
    reasons.push(
      sign === 1
        ? say("the source water's analysis does not give enough cations (Ca, Mg, K, Na) to balance the rest")
        : say(
            "the source water's analysis does not give enough anions (HCO3, SO4, Cl, NO3) to balance the rest",
          ),
    );
  return { value: reasons.length > 0 ? null : atLeast, atLeast, reason: [...new Set(reasons)].join('; ') };
}

function sideLackingInWater(water: Readonly<Record<Nutrient, Amount>>): 'cations' | 'anions' | null {
  if (water.NO3_N.value === null) return null;
  const side = (sign: number): number =>
    sum(
      ionIds.map((ion) => {
        const { charge, nutrient } = ions[ion];
        if (nutrient === null || Math.sign(charge) !== sign) return 0;
        return (water[nutrient].atLeast / milligramsPerMillimole(nutrient)) * Math.abs(charge);
      }),
    );
  const cations = side(1);
  const anions = side(-1);
  const gap = Math.abs(cations - anions);
  if (gap <= waterTolerance.meq || gap <= waterTolerance.share * Math.max(cations, anions)) return null;
  return cations > anions ? 'anions' : 'cations';
}

function difference(cations: number | null, anions: number | null): number | null {
  if (cations === null || anions === null || cations + anions === 0) return null;
  return (200 * (cations - anions)) / (cations + anions);
}
