import { say } from '../../model/say.ts';
import type { Nutrient } from '../../model/nutrient-keys.ts';
import type { SaltInSolution } from './amounts.ts';
import { heldByName } from './held-by-name.ts';
import type { Warning } from './recipe.ts';
import { solubilityOf } from './solubility.ts';
import { type Stock, stockWeights } from './stock-weights.ts';

/**
 * What would go wrong in the concentrates: calcium beside sulfate (gypsum) or phosphate in one stock, and more
 * of a salt than dissolves at 20 C. A salt counts as holding calcium, sulfate or phosphate where its label or
 * formula gives any, or its name says so. Below 90 % of the solubility nothing is said.
 *
 * Where a recipe gives stocks but no ratio, they are still concentrates, but solubility cannot be told.
 */
export function stockWarnings(salts: readonly SaltInSolution[], ratio: number | undefined): Warning[] {
  const used = salts.filter(({ gramsPerLitre }) => gramsPerLitre > 0);
  return stockWeights(used, ratio ?? 1).flatMap((stock) => {
    const members = used.filter((salt) => salt.stock === stock.name);
    const concentrated = ratio === undefined || ratio > 1;
    return [
      ...(concentrated ? compatibility(stock.name, members) : []),
      ...(ratio === undefined ? [] : dissolving(stock, members)),
    ];
  });
}

/** A stock's name in a sentence: "stock A", or "the stock" where it has none. */
export function stockInWords(name: string): string {
  return name === '' ? say('the stock') : say('stock {name}', { name });
}

function compatibility(stock: string, members: readonly SaltInSolution[]): Warning[] {
  const holding = (nutrient: Nutrient): SaltInSolution[] => members.filter((salt) => holds(salt, nutrient));
  const calcium = holding('Ca');
  return (['S', 'P'] as const).flatMap((nutrient) => {
    const others = holding(nutrient);
    if (calcium.length === 0 || others.length === 0) return [];
    const values = { calcium: list(calcium), others: list(others), stock: stockInWords(stock) };
    const text =
      nutrient === 'S'
        ? say(
            'Calcium ({calcium}) and sulfate ({others}) share {stock}: in a concentrate they come down as gypsum. Keep them in separate stocks.',
            values,
          )
        : say(
            'Calcium ({calcium}) and phosphate ({others}) share {stock}: in a concentrate they come down as calcium phosphate. Keep them in separate stocks.',
            values,
          );
    return [{ kind: 'settles', text, salt: others[0]!.place }];
  });
}

function holds({ name, analysis }: SaltInSolution, nutrient: Nutrient): boolean {
  const share = analysis.percent[nutrient];
  return share.value === null ? heldByName(name).has(nutrient) : share.value > 0;
}

function dissolving(stock: Stock, members: readonly SaltInSolution[]): Warning[] {
  return stock.salts.flatMap(({ name, oneIn }, at): Warning[] => {
    const limit = solubilityOf(name, members[at]!.analysis.formula);
    if (limit === null || oneIn <= 0.9 * limit) return [];
    const values = { salt: name, stock: stockInWords(stock.name), grams: whole(oneIn), most: whole(limit) };
    const beyond = oneIn > limit;
    const text = beyond
      ? say(
          '{salt} will not all dissolve: {grams} g in a litre of {stock}, and about {most} g dissolve in a litre of water at 20 C. Make the stock weaker.',
          values,
        )
      : say(
          '{salt} will hardly all dissolve: {grams} g in a litre of {stock}, and about {most} g dissolve in a litre of water at 20 C, less in the cold or beside other salts.',
          values,
        );
    return [{ kind: beyond ? 'beyond solubility' : 'near solubility', text, salt: members[at]!.place }];
  });
}

function whole(value: number): string {
  return String(Number(value.toPrecision(3)));
}

function list(salts: readonly SaltInSolution[]): string {
  return [...new Set(salts.map(({ name }) => name))].join(', ');
}
