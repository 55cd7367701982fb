import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const conductivity: Method = {
  id: 'conductivity',
  name: 'Conductivity to expect',
  use: 'The electrical conductivity (EC, at 25 °C) that a meter should show in the fresh solution, by several published formulas. They differ by some tenths of a mS/cm: a reading within their spread agrees with the recipe.',
  formula: [
    'sum of cations in meq/L ÷ 10',
    '0.095 × sum of cations in meq/L + 0.19',
    '(sum of cations in meq/L + 1.462) ÷ 9.819',
    'sum of the conductivities of all ions, corrected for ionic strength',
  ],
  references: [
    'U.S. Salinity Laboratory Staff (1954), Diagnosis and Improvement of Saline and Alkali Soils, USDA Handbook 60.',
    'C. Sonneveld, W. Voogt and L. Spaans (1999), A universal algorithm for calculation of nutrient solutions, Acta Horticulturae 481, 331–339.',
    'D. Savvas and K. Adamidis (1999), Automated management of nutrient solutions based on target electrical conductivity, pH, and nutrient concentration ratios, Journal of Plant Nutrition 22, 1415–1432.',
    'C. A. J. Appelo (2010), Specific conductance: how to calculate, to use, and the pitfalls.',
  ],
  example({ findings }) {
    const steps = (findings.nutrients?.ec_estimates ?? []).flatMap(({ formula, value }) =>
      value === null ? [] : [{ name: `${formatNumber(value, 2)} mS/cm`, formula }],
    );
    return steps.length === 0 ? null : { of: 'the fresh solution', steps };
  },
};
