import { byIon, type IonId, ions } from './ions.ts';
import type { Formula } from './parse-formula.ts';

const metals = ['Mn', 'Zn', 'Cu', 'Co', 'Ni'] as const;

/**
 * The moles of each ion that one mole of a salt gives in solution; their charges add up to nothing exactly.
 * Iron takes the charge that the rest leaves to it, 2 or 3. What charge is left over then is the hydrogen of an
 * acid, the hydroxide of an alkali (`K2HPO4` takes up one H+, which is the same), or, where the formula holds
 * carbon that is no carbonate, an organic anion: in a chelate the metals are no free ions.
 *
 * @example formulaIons(formula of Ca(NO3)2.4H2O) // {Ca: 1, NO3: 2, all others 0}
 */
export function formulaIons(formula: Formula): Record<IonId, number> {
  const atoms = (symbol: string): number => formula.atoms[symbol] ?? 0;
  const moles = byIon(() => 0);
  for (const symbol of ['K', 'Ca', 'Mg', 'Na', 'Cl'] as const) moles[symbol] = atoms(symbol);
  moles.NH4 = formula.ammonium;
  moles.NO3 = formula.nitrate;
  moles.H2PO4 = atoms('P');
  moles.SO4 = atoms('S');
  moles.MoO4 = atoms('Mo');
  moles.HCO3 = formula.carbonate;
  const organic = atoms('C') > formula.carbonate;
  if (!organic) {
    for (const metal of metals) moles[metal] = atoms(metal);
    const iron = atoms('Fe');
    if (iron > 0) moles[netCharge(moles) <= -2.5 * iron ? 'Fe3' : 'Fe2'] = iron;
  }
  const left = netCharge(moles);
  if (left < 0) moles.H = -left;
  else moles[organic ? 'organic' : 'OH'] += left;
  return moles;
}

/** Moles of charge: cations less anions. */
function netCharge(moles: Readonly<Record<IonId, number>>): number {
  return (Object.keys(moles) as IonId[]).reduce((total, ion) => total + moles[ion] * ions[ion].charge, 0);
}
