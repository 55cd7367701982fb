import type { Amounts, SaltInSolution } from './amounts.ts';
import { ionIds, ions, milligramsPerMillimole } from './ions.ts';
import { type Amount, known } from './recipe.ts';

/**
 * The same amounts, with nitrogen whose form no label tells shared out between nitrate and ammonium so that
 * each such salt is neutral: ammonium = (other anions + nitrogen - other cations) / 2 in meq, kept between 0 and
 * all of it, none taken for urea. Null where nothing is to be reckoned, or where more than the form is unknown.
 *
 * This is an estimate for reckoning a conductivity, and is not published as an analysis. For a calcium nitrate
 * of 15.5 % N and 19 % Ca it gives 1.1 % ammonium nitrogen, which is what the double salt
 * 5 Ca(NO3)2 . NH4NO3 . 10 H2O holds (1.3 %).
 */
export function reckonedForms(amounts: Amounts): Amounts | null {
  const open = amounts.salts.filter((salt) => salt.gramsPerLitre > 0 && formsOpen(salt.analysis.percent));
  if (open.length === 0 || formsOpen(amounts.water)) return null;
  const total = { ...amounts.total };
  let ammonium = total.NH4_N.atLeast;
  let nitrate = total.NO3_N.atLeast;
  for (const salt of open) {
    const share = ammoniumPercent(salt);
    if (share === null) return null;
    ammonium += 10 * salt.gramsPerLitre * share;
    nitrate += 10 * salt.gramsPerLitre * (salt.analysis.percent.N.value! - share);
  }
  total.NH4_N = known(ammonium);
  total.NO3_N = known(nitrate);
  return { ...amounts, total };
}

function formsOpen(forms: Readonly<Record<'NO3_N' | 'NH4_N', Amount>>): boolean {
  return forms.NO3_N.value === null || forms.NH4_N.value === null;
}

/** Percent of ammonium nitrogen that makes the salt neutral; null where the label tells some form, or an ion is unknown. */
function ammoniumPercent({ analysis: { percent } }: SaltInSolution): number | null {
  const nitrogen = percent.N.value;
  if (nitrogen === null || percent.NO3_N.value !== null || percent.NH4_N.value !== null) return null;
  let charge = 0;
  for (const ion of ionIds) {
    const { nutrient, charge: sign } = ions[ion];
    if (nutrient === null || nutrient === 'NO3_N' || nutrient === 'NH4_N') continue;
    const share = percent[nutrient].value;
    if (share === null) return null;
    charge += (share * sign) / milligramsPerMillimole(nutrient);
  }
  const atom = milligramsPerMillimole('N');
  const ammonium = (nitrogen / atom - charge) / 2;
  return Math.min(nitrogen, Math.max(0, ammonium * atom));
}
