import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const waterUsed: Method = {
  id: 'water-used',
  name: 'Water used',
  use: 'How much the plants and the air took from a container between the first and the last reading of its level.',
  formula: [
    'water used = inside length × inside width × fall of the level + added + rain − overflow',
    '1 cm of fall over 1 m² is 10 L',
    'uncertain by √2 × 0.2 cm over the inside area: each level is read to about 2 mm',
  ],
  remarks: ['Water that evaporated beside the plants is counted with what went through them.'],
  references: ['Common practice, no source.'],
  example({ findings }) {
    const found = findings.water.find(({ used_L: used }) => used !== null);
    if (!found || found.used_L === null) return null;
    const steps = [{ name: 'Water used', formula: `${found.method} = ${formatNumber(found.used_L, 1)} L` }];
    if (found.L_per_kg !== null) {
      const kilograms = found.used_L / found.L_per_kg;
      steps.push({
        name: 'For each kg of fresh weight',
        formula: `${formatNumber(found.used_L, 1)} L ÷ ${formatNumber(kilograms, 3)} kg = ${formatNumber(found.L_per_kg, 1)} L/kg`,
      });
    }
    return { of: `container ${found.container}`, steps };
  },
};
