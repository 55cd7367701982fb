import { gramsIn, litresIn } from '../../model/units.ts';
import type { SaltInSolution } from './amounts.ts';

export interface Weighing {
  name: string;
  /** g for the tank. */
  grams: number;
  /** Avoirdupois ounces for the tank. */
  ounces: number;
  /** Avoirdupois ounces to a US gallon of solution. */
  ouncesPerGallon: number;
}

/**
 * What to weigh of each salt for a tank of so many litres of finished solution.
 *
 * @example weighingFor([{name: 'Magnesium sulfate', gramsPerLitre: 0.412, ...}], 378.5) // 155.9 g, 5.5 oz
 */
export function weighingFor(
  salts: readonly Pick<SaltInSolution, 'name' | 'gramsPerLitre'>[],
  litres: number,
): Weighing[] {
  return salts.map(({ name, gramsPerLitre }) => ({
    name,
    grams: gramsPerLitre * litres,
    ounces: (gramsPerLitre * litres) / gramsIn['oz']!,
    ouncesPerGallon: (gramsPerLitre * litresIn['gal']!) / gramsIn['oz']!,
  }));
}
