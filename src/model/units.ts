/**
 * The unit table. Factors are exact by definition: the international avoirdupois pound
 * (1959 agreement, 0.45359237 kg), the inch (2.54 cm) and the US gallon (231 cubic inches).
 */

/** Grams in one unit of weight. */
export const gramsIn: Readonly<Record<string, number>> = {
  g: 1,
  kg: 1000,
  mg: 0.001,
  oz: 28.349523125,
  '[oz_av]': 28.349523125,
  lb: 453.59237,
  '[lb_av]': 453.59237,
};

/** Metres in one unit of length. */
export const metresIn: Readonly<Record<string, number>> = {
  mm: 0.001,
  cm: 0.01,
  m: 1,
  in: 0.0254,
  ft: 0.3048,
};

/** Square metres in one square foot. */
export const squareMetresInSquareFoot = 0.09290304;

/** Litres in one unit of volume; gal is the US gallon. */
export const litresIn: Readonly<Record<string, number>> = { L: 1, mL: 0.001, m3: 1000, gal: 3.785411784 };

/** True where the unit is one of weight, so that values are converted to g. */
export function isWeight(unit: string | undefined): boolean {
  return unit !== undefined && Object.hasOwn(gramsIn, unit);
}
