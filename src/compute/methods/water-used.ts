import { say } from '../../model/say.ts';
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
    'for each plant and day = water used ÷ plants set ÷ days between the first and the last reading',
    'left = volume at the first reading − inside area × fall + what was added after the last reading',
    'the first fill lasts where volume + rain − overflow is more than the water used up to the last cut',
  ],
  remarks: [
    'Water that evaporated beside the plants is counted with what went through them.',
    'Treatments that shared a container shared its water: it is never split between them.',
    'Where the last reading was before the last cut, the days between count as the last two readings showed. Where the result is within the uncertainty of the readings, it cannot be told whether the fill lasts.',
  ],
  references: ['Common practice, no source.'],
  example({ findings }) {
    const found = findings.water.find(({ used_L: used }) => used !== null);
    if (!found || found.used_L === null) return null;
    const steps = [
      { name: 'Water used', formula: `${say(found.method)} = ${formatNumber(found.used_L, 1)} L` },
    ];
    if (found.L_per_kg !== null) {
      const kilograms = found.used_L / found.L_per_kg;
      steps.push({
        name: 'For each kg of fresh weight',
        formula: `${formatNumber(found.used_L, 1)} L ÷ ${formatNumber(kilograms, 3)} kg = ${formatNumber(found.L_per_kg, 1)} L/kg`,
      });
    }
    const { L_per_plant_day: each, plants = 0, days = 0 } = found;
    if (each !== null && each !== undefined) {
      steps.push({
        name: 'For each plant and day',
        formula: say('{used} L ÷ {plants} plants ÷ {days} days = {each} L', {
          used: formatNumber(found.used_L, 1),
          plants,
          days,
          each: formatNumber(each, 3),
        }),
      });
    }
    return { of: say('container {container}', { container: found.container }), steps };
  },
};
