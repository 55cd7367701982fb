/**
 * The names that a recipe may use: on a label (`percent`, in percent by weight), of the source water (mg/L),
 * and for what the solution holds (mg/L). Elements stand for the element's own weight, oxides for the oxide's,
 * NO3_N, NH4_N and urea_N for the weight of the nitrogen in that form, ions for the ion's weight.
 */

/** What a solution is said to hold, in the order it is listed. */
export const nutrientNames = [
  'N',
  'NO3_N',
  'NH4_N',
  'urea_N',
  'P',
  'K',
  'Ca',
  'Mg',
  'S',
  'Fe',
  'Mn',
  'Zn',
  'Cu',
  'B',
  'Mo',
  'Cl',
  'Na',
  'Si',
  'Co',
  'Ni',
  'HCO3',
] as const;

export type Nutrient = (typeof nutrientNames)[number];

/** What may stand in a salt's `percent`. Bicarbonate is no label's analysis; a formula can hold it. */
export const labelKeys: readonly string[] = [
  ...nutrientNames.filter((name) => name !== 'HCO3'),
  'P2O5',
  'K2O',
  'CaO',
  'MgO',
  'SO3',
  'SiO2',
];

/** What may stand in the source water's analysis. */
export const waterKeys: readonly string[] = [...nutrientNames, 'NO3', 'NH4', 'SO4'];
