import { unitName } from '../format/unit-name.ts';
import { say } from '../../model/say.ts';
import type { TreatmentDescription } from '../../model/findings.ts';
import { formatNumber } from '../format/format-number.ts';

/** The yield by area and by day with its numbers put in; empty where there is no area. */
export function areaSteps(description: TreatmentDescription): { name: string; formula: string }[] {
  const { kg_per_m2: yieldByArea, g_per_m2_day: byDay, per_pot: pots } = description;
  if (yieldByArea === null || !pots || pots.mean === null) return [];
  const kilograms = (pots.mean * pots.n) / 1000;
  // Of nothing harvested the area cannot be told back, and need not be.
  const division =
    yieldByArea > 0
      ? `${formatNumber(kilograms, 3)}\u00a0kg ÷ ${formatNumber(kilograms / yieldByArea, 4)}\u00a0m² = `
      : '';
  const steps = [
    {
      name: say('Yield'),
      formula:
        `${say('weight of the pots ÷ their part of the cover')} = ` +
        `${division}${formatNumber(yieldByArea, 2)}\u00a0kg/m²`,
    },
  ];
  const days = description.days_from_transplanting ?? description.days_from_sowing;
  if (byDay !== null && days !== null) {
    steps.push({
      name: say('Yield a day'),
      formula:
        `${say('1000 × yield ÷ days')} = ` +
        `1000 × ${formatNumber(yieldByArea, 4)} ÷ ${days} = ${formatNumber(byDay, 1)}\u00a0${unitName('g/m2/day')}`,
    });
  }
  return steps;
}
