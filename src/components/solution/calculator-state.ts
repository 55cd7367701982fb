import type { Recipe } from '../../compute/nutrients/recipe.ts';
import { writeAnalysis } from './read-analysis.ts';

/** The fields of one salt, as typed. */
export interface SaltFields {
  name: string;
  amount: string;
  label: string;
  formula: string;
  stock: string;
}

/** All fields of the calculator, as typed; also what its address holds. */
export interface CalculatorState {
  /** The trial or example that it started from; empty where from nothing. */
  trial: string;
  /** The name on the mixing card. */
  title: string;
  salts: readonly SaltFields[];
  /** What amounts are in: g/L or oz to 100 US gallons. */
  per: string;
  water: string;
  volume: string;
  /** What volumes are in: L or gal. */
  unit: string;
  ratio: string;
  bottle: string;
  ec: string;
}

/** The names of the single fields, in the order of the address. */
export const singleFields = [
  'trial',
  'title',
  'per',
  'water',
  'volume',
  'unit',
  'ratio',
  'bottle',
  'ec',
] as const;
/** The names of the fields that each salt has. */
export const saltFields = ['name', 'amount', 'label', 'formula', 'stock'] as const;

/** A salt of which nothing is written yet. */
export const blankSalt: SaltFields = { name: '', amount: '', label: '', formula: '', stock: '' };

/** More salts than any recipe has, so that an address cannot make a page without end. */
export const mostSalts = 40;
const longest = 200;

/** A recipe set into the fields, metric. */
export function stateOf(
  recipe: Recipe,
  from: { trial: string; title: string; litres: number },
): CalculatorState {
  return {
    trial: from.trial,
    title: from.title,
    salts: (recipe.salts ?? []).map((salt) => ({
      name: salt.name,
      amount: String(salt.grams_per_litre),
      label: writeAnalysis(salt.percent ?? {}),
      formula: salt.formula ?? '',
      stock: salt.stock ?? '',
    })),
    per: 'g/L',
    water: writeAnalysis(recipe.water ?? {}),
    volume: String(Number(from.litres.toPrecision(6))),
    unit: 'L',
    ratio: recipe.stock_ratio === undefined ? '' : String(recipe.stock_ratio),
    bottle: '1',
    ec: '',
  };
}

/** The fields as the query of an address; what is empty is left out, save in a salt. */
export function toAddress(state: CalculatorState): string {
  const query = new URLSearchParams();
  for (const field of singleFields) if (state[field] !== '') query.append(field, state[field]);
  for (const salt of state.salts) for (const field of saltFields) query.append(field, salt[field]);
  return query.toString();
}

/** The fields that an address holds; null where it names no salts, so that there is nothing to show of it. */
export function fromAddress(search: string): CalculatorState | null {
  const query = new URLSearchParams(search);
  const names = query.getAll('name').slice(0, mostSalts);
  if (names.length === 0) return null;
  const single = (field: string): string => (query.get(field) ?? '').slice(0, longest);
  const columns = Object.fromEntries(saltFields.map((field) => [field, query.getAll(field)]));
  const salts = names.map((_, index): SaltFields => {
    const [name, amount, label, formula, stock] = saltFields.map(
      (field) => columns[field]?.[index]?.slice(0, longest) ?? '',
    );
    return { name: name!, amount: amount!, label: label!, formula: formula!, stock: stock! };
  });
  return {
    trial: single('trial'),
    title: single('title'),
    salts,
    per: query.get('per') === 'oz/100gal' ? 'oz/100gal' : 'g/L',
    water: single('water'),
    volume: single('volume'),
    unit: query.get('unit') === 'gal' ? 'gal' : 'L',
    ratio: single('ratio'),
    bottle: single('bottle'),
    ec: single('ec'),
  };
}
