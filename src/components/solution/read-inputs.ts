import { say } from '../../model/say.ts';
import { parseFormula } from '../../compute/nutrients/parse-formula.ts';
import type { Recipe, Salt } from '../../compute/nutrients/recipe.ts';
import { labelKeys, waterKeys } from '../../model/nutrient-keys.ts';
import { gramsIn, litresIn } from '../../model/units.ts';
import type { CalculatorState, SaltFields } from './calculator-state.ts';
import { type AnalysisForm, readAnalysis } from './read-analysis.ts';
import { type NumberLimits, readNumber } from './read-number.ts';

/** A field that is not understood. */
export interface InputFault {
  field: string;
  /** Which salt it belongs to, from 0; null for the other fields. */
  salt: number | null;
  message: string;
}

/** What the fields ask for, in metric units. */
export interface Inputs {
  recipe: Recipe;
  litres: number;
  stockLitres: number;
  measuredEc: number | null;
}

const labelForm: AnalysisForm = { keys: labelKeys, example: 'N 15.5, Ca 19', most: 100, grade: true };
const waterForm: AnalysisForm = { keys: waterKeys, example: 'Ca 20, Mg 6', most: 100_000, grade: false };

/** Grams to the litre in one unit of a salt's amount. */
const gramsPerLitreIn: Readonly<Record<string, number>> = {
  'g/L': 1,
  'oz/100gal': gramsIn['oz']! / (100 * litresIn['gal']!),
};

/** Litres in one unit of a volume, and grams to the litre in one unit of an amount; metric where it is not known. */
export const unitSizes = {
  volume: (unit: string): number => (unit === 'gal' ? litresIn['gal']! : 1),
  amount: (per: string): number => gramsPerLitreIn[per] ?? 1,
};

/** Reads all fields: what they ask for, or every field that is not understood. A salt with all fields empty is passed over. */
export function readInputs(state: CalculatorState): Inputs | readonly InputFault[] {
  const faults: InputFault[] = [];
  const number = (field: string, text: string, limits: NumberLimits, salt: number | null = null): number => {
    const read = readNumber(text, limits);
    if ('value' in read) return read.value;
    faults.push({ field, salt, message: read.fault });
    return 0;
  };
  const optional = (field: string, text: string, limits: NumberLimits): number | null =>
    text.trim() === '' ? null : number(field, text, limits);
  const analysis = (field: string, text: string, form: AnalysisForm, salt: number | null = null) => {
    const read = readAnalysis(text, form);
    if ('analysis' in read) return read.analysis;
    faults.push({ field, salt, message: read.fault });
    return {};
  };
  const salts = state.salts.flatMap((fields, index): Salt[] => {
    if (Object.values(fields).every((text: string) => text.trim() === '')) return [];
    const percent = analysis('label', fields.label, labelForm, index);
    const grams = number('amount', fields.amount, { most: 100_000 }, index) * unitSizes.amount(state.per);
    faults.push(...formulaFaults(fields, index), ...nameFaults(fields, index));
    return [saltOf(fields, grams, percent)];
  });
  const [first, ...rest] = salts;
  if (!first)
    faults.push({ field: 'name', salt: 0, message: say('No salt is written here: write the name of one') });
  const water = analysis('water', state.water, waterForm);
  const litres = number('volume', state.volume, { above: true }) * unitSizes.volume(state.unit);
  const ratio = optional('ratio', state.ratio, { least: 1, most: 10_000 });
  const bottle = optional('bottle', state.bottle, { above: true }) ?? 1;
  const measuredEc = optional('ec', state.ec, { most: 100 });
  if (faults.length > 0 || !first) return faults;
  return {
    recipe: { water, salts: [first, ...rest], ...(ratio === null ? {} : { stock_ratio: ratio }) },
    litres,
    stockLitres: bottle * (state.bottle.trim() === '' ? 1 : unitSizes.volume(state.unit)),
    measuredEc,
  };
}

function saltOf(fields: SaltFields, grams: number, percent: Record<string, number>): Salt {
  const [name, formula, stock] = [fields.name.trim(), fields.formula.trim(), fields.stock.trim()];
  return {
    name: name === '' ? formula : name,
    grams_per_litre: grams,
    ...(Object.keys(percent).length > 0 ? { percent } : {}),
    ...(formula === '' ? {} : { formula }),
    ...(stock === '' ? {} : { stock }),
  };
}

function nameFaults({ name, formula }: SaltFields, salt: number): InputFault[] {
  if (name.trim() !== '' || formula.trim() !== '') return [];
  return [{ field: 'name', salt, message: say('This salt has no name: write what stands on its bag') }];
}

function formulaFaults({ formula }: SaltFields, salt: number): InputFault[] {
  if (formula.trim() === '') return [];
  const read = parseFormula(formula);
  if (!('problem' in read)) return [];
  const message = say('"{formula}" {problem}: write such as MgSO4.7H2O', {
    formula: formula.slice(0, 40),
    problem: read.problem,
  });
  return [{ field: 'formula', salt, message }];
}
