import { say } from '../../model/say.ts';
import { labelKeys, type Nutrient } from '../../model/nutrient-keys.ts';
import { sum } from '../../statistics/sum.ts';
import { atomicWeight } from './atomic-weights.ts';
import { byNutrient } from './by-nutrient.ts';
import { formulaIons } from './formula-ions.ts';
import { heldByName } from './held-by-name.ts';
import { byIon, type IonId, milligramsPerMillimole } from './ions.ts';
import { knownSalt } from './known-salts.ts';
import { molarMass } from './molar-mass.ts';
import { type NamedAnalysis, namedAnalysis, type Remark } from './named-analysis.ts';
import { nitrogenForms } from './nitrogen-forms.ts';
import { otherNames } from './oxide-factors.ts';
import { type Formula, parseFormula } from './parse-formula.ts';
import { type Amount, known, type Salt, unknown } from './recipe.ts';

export interface SaltAnalysis {
  /** Percent of the salt's weight, by nutrient. */
  percent: Record<Nutrient, Amount>;
  /** Moles in 100 g of the ions that no nutrient stands for; from the formula, 0 without one. */
  otherIons: Record<IonId, number>;
  formula: Formula | null;
  remarks: readonly Remark[];
}

const nitrogen: readonly Nutrient[] = ['N', 'NO3_N', 'NH4_N', 'urea_N'];
const grade: readonly Nutrient[] = ['N', 'P', 'K'];
const oftenUnsaid: readonly Nutrient[] = ['S', 'Fe', 'Mn', 'Zn', 'Cu', 'B', 'Mo'];

/**
 * What a salt holds, in percent of its weight. What the label gives counts; beside a formula the rest follows
 * from the formula, and what the formula does not hold is 0. Without a formula, of what the label does not give:
 *
 * 1. what the salt's name says it holds is unknown (the sulfur of a magnesium sulfate whose label gives only Mg);
 * 2. a single salt of the trade holds nothing else: 0;
 * 3. N, P and K are 0: the three numbers of the grade stand on every label;
 * 4. Ca and Mg are 0 where the label goes beyond the grade (gives Ca, Mg or S), else unknown;
 * 5. S and the micronutrients, which labels often leave unsaid, are unknown;
 * 6. Cl, Na, Si, Co, Ni and bicarbonate, which a label gives only where it makes a point of them, count as 0.
 *
 * A salt with neither label nor formula, or with a name on its label that is not known, is unknown but for 2.
 * These are rules of thumb about labels: common practice, no source.
 */
export function saltAnalysis(salt: Salt): SaltAnalysis {
  const label = namedAnalysis(salt.percent ?? {}, labelKeys, say('{salt}: the label', { salt: salt.name }));
  const remarks = [...label.remarks];
  const read = salt.formula === undefined ? null : parseFormula(salt.formula);
  if (read && 'problem' in read) {
    const text = say('{salt}: the formula "{formula}" {problem}, and is not used.', {
      salt: salt.name,
      formula: salt.formula!.slice(0, 60),
      problem: read.problem,
    });
    remarks.push({ kind: 'formula', text });
  }
  const formula = read && 'formula' in read ? read.formula : null;
  const percent = formula
    ? byNutrient((nutrient) => percentByFormula(formula, nutrient, salt.name))
    : byNutrient((nutrient) => notGiven(salt, nutrient, label));
  if (formula) remarks.push(...disagreements(salt.name, label.given, percent));
  const byLabel = [...label.given].filter(([nutrient]) => !nitrogen.includes(nutrient));
  for (const [nutrient, value] of byLabel) percent[nutrient] = known(value);
  if (nitrogen.some((form) => label.given.has(form))) {
    const { remark, ...forms } = nitrogenForms(withFormsOf(formula, label.given, percent), salt.name);
    Object.assign(percent, forms);
    if (remark) remarks.push({ kind: 'label', text: remark });
    if (knownSalt(salt.name) && !heldByName(salt.name).has('urea_N')) percent.urea_N = noUrea(percent.urea_N);
  }
  remarks.push(...overfull(salt.name, label.given));
  const moles = formula ? formulaIons(formula) : byIon(() => 0);
  const hundredGrams = formula ? 100 / molarMass(formula.atoms) : 0;
  return { percent, otherIons: byIon((ion) => moles[ion] * hundredGrams), formula, remarks };
}

/** Where the label gives only N, a formula beside it settles the forms, in its own proportions. */
function withFormsOf(
  formula: Formula | null,
  given: ReadonlyMap<Nutrient, number>,
  percent: Readonly<Record<Nutrient, Amount>>,
): ReadonlyMap<Nutrient, number> {
  const total = percent.N.value;
  if (!formula || total === null || total === 0 || !given.has('N')) return given;
  if (nitrogen.some((form) => form !== 'N' && given.has(form))) return given;
  const scaled = new Map(given);
  for (const form of nitrogen.slice(1)) {
    const share = percent[form].value;
    if (share !== null) scaled.set(form, (share / total) * given.get('N')!);
  }
  return scaled;
}

/** A single salt that is not urea holds none, whatever is open between nitrate and ammonium. */
function noUrea({ value }: Amount): Amount {
  return known(value ?? 0);
}

/** A formula that only sums its atoms (N2H4O3) leaves the form of its nitrogen open. */
function percentByFormula(formula: Formula, nutrient: Nutrient, name: string): Amount {
  const written = formula.nitrate + formula.ammonium + formula.amide;
  const open = formula.atoms['C'] === undefined && (formula.atoms['N'] ?? 0) > written;
  if (open && nutrient !== 'N' && nitrogen.includes(nutrient)) {
    return unknown(say('{salt}: the formula does not show the nitrogen as NO3 or NH4', { salt: name }));
  }
  const groups: Partial<Record<Nutrient, number>> = {
    NO3_N: formula.nitrate,
    NH4_N: formula.ammonium,
    urea_N: formula.amide,
    HCO3: formula.carbonate,
  };
  const atoms = groups[nutrient] ?? formula.atoms[nutrient] ?? 0;
  return known((100 * atoms * milligramsPerMillimole(nutrient)) / molarMass(formula.atoms));
}

function notGiven(salt: Salt, nutrient: Nutrient, { given, notKnown }: NamedAnalysis): Amount {
  const named = { salt: salt.name };
  const missing = unknown(labelDoesNotGive(salt.name, nutrient));
  if (heldByName(salt.name).has(nutrient)) return missing;
  if (knownSalt(salt.name)) return known(0);
  if (notKnown.length > 0) return unknown(say('{salt}: a name on the label is not known', named));
  if (given.size === 0)
    return unknown(say("{salt}: neither a label's analysis nor a formula is given", named));
  if (nitrogen.includes(nutrient)) return heldByName(salt.name).has('N') ? missing : known(0);
  if (grade.includes(nutrient)) return known(0);
  const beyondGrade = given.has('Ca') || given.has('Mg') || given.has('S');
  if (nutrient === 'Ca' || nutrient === 'Mg') return beyondGrade ? known(0) : missing;
  return oftenUnsaid.includes(nutrient) ? missing : known(0);
}

/** Why a share is unknown: of one nutrient, or of several in a list. */
export function labelDoesNotGive(salt: string, nutrients: string): string {
  return say('{salt}: the label does not give {nutrients}', { salt, nutrients });
}

/** Nutrients of which the label and the formula differ by more than a tenth: mostly another hydrate. */
function disagreements(
  name: string,
  label: ReadonlyMap<Nutrient, number>,
  byFormula: Readonly<Record<Nutrient, Amount>>,
): Remark[] {
  return [...label].flatMap(([nutrient, given]): Remark[] => {
    const expected = byFormula[nutrient].value;
    if (expected === null || Math.abs(given - expected) <= Math.max(0.1 * expected, 0.15)) return [];
    const shown = String(Number(expected.toFixed(1)));
    const text = say(
      '{salt}: the label gives {given} % {nutrient}, the formula {shown} %; the label is used. Is it another hydrate?',
      { salt: name, given, nutrient, shown },
    );
    return [{ kind: 'label', text }];
  });
}

/**
 * A label that adds up to more than the salt weighs. Forms of nitrogen count in N. Phosphorus, potassium, calcium and
 * magnesium never stand in a salt as bare elements: where the parts are too many only with the oxygen beside them, that
 * is said. Two atoms of chlorine stand in the place of one of oxygen.
 */
function overfull(name: string, label: ReadonlyMap<Nutrient, number>): Remark[] {
  const parts = [...label].filter(([nutrient]) => nutrient === 'N' || !nitrogen.includes(nutrient));
  const total = sum(parts.map(([, percent]) => percent));
  const bound = sum(parts.map(([nutrient, percent]) => percent * (withOxygen[nutrient] ?? 1)));
  if (total <= 100 && bound <= mostBound) return [];
  const text =
    total > 100
      ? say("{salt}: the label adds up to {total} % of the salt's weight.", {
          salt: name,
          total: total.toFixed(0),
        })
      : say(
          "{salt}: the label adds up to {total} % of the salt's weight, with the oxygen that its P, K, Ca and Mg are bound to.",
          { salt: name, total: bound.toFixed(0) },
        );
  return [{ kind: 'label', text }];
}

/** Parts of a label are rounded, each to a half or a tenth of a percent. */
const mostBound = 101;

/** Grams of the oxide in which a label counts one gram of the nutrient; less oxygen for chlorine, and no carbonate. */
const withOxygen: Partial<Record<Nutrient, number>> = {
  P: 1 / otherNames['P2O5']!.factor,
  K: 1 / otherNames['K2O']!.factor,
  Ca: 1 / otherNames['CaO']!.factor,
  Mg: 1 / otherNames['MgO']!.factor,
  Cl: 1 - atomicWeight('O') / (2 * atomicWeight('Cl')),
  HCO3: 0,
};
