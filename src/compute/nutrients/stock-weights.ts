import type { SaltInSolution } from './amounts.ts';

export interface StockSalt {
  name: string;
  /** g in a litre of stock where 1 part of stock is in N parts of solution: N x g/L of solution. */
  oneIn: number;
  /** g in a litre of stock where 1 part of stock goes to N parts of water: (N + 1) x g/L of solution. */
  onePlus: number;
}

export interface Stock {
  /** Its label; empty where the recipe has one stock without a name. */
  name: string;
  salts: readonly StockSalt[];
}

/**
 * Grams of each salt in a litre of each stock. "1 in N" makes N litres of solution from a litre of stock, and is
 * what trial.yaml's `stock_ratio` means. "1 plus N", which injectors are often marked with (1:N), adds N litres
 * of water, makes N + 1 litres, and so needs a stock stronger by 1/N: 1 % at 1:100, but 10 % at 1:10.
 *
 * Several stocks (A and B) are each dosed so into the same solution; none is poured into another.
 */
export function stockWeights(salts: readonly SaltInSolution[], ratio: number): Stock[] {
  const inStocks = salts.filter(({ stock }) => stock !== null);
  const stocks = [...Map.groupBy(inStocks, ({ stock }) => stock!)];
  return stocks
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, members]) => ({
      name,
      salts: members.map((salt) => ({
        name: salt.name,
        oneIn: salt.gramsPerLitre * ratio,
        onePlus: salt.gramsPerLitre * (ratio + 1),
      })),
    }));
}
