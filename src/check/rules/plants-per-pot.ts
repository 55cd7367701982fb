import { say } from '../../model/say.ts';
import type { Facts } from '../facts.ts';
import type { Report, Rule } from '../rule.ts';
import { parseWhole } from '../number.ts';
import { mostPlants, plantsPerPot, plantsPerPotFactor } from '../plants-per-pot.ts';
import { positionPlace } from '../places.ts';
import { whereOf } from '../grid.ts';
import { showText } from '../show-value.ts';

const rule: Rule = {
  rule: 'plants-per-pot',
  severity: 'error',
  acceptable: false,
  title: 'Plants in a pot contradicted',
  meaning:
    'The levels of the factor plants_per_pot say how many plants were set; they are whole numbers, and agree with plants in layout.csv.',
  example: 'plants is 2, but plants_per_pot is 3',
  check,
};
export default rule;

function check({ metadata, layout }: Facts, report: Report): void {
  const index = (metadata.draft.factors ?? []).findIndex(({ id }) => id === plantsPerPotFactor);
  const factor = metadata.draft.factors?.[index];
  if (factor === undefined) return;
  let isSound = true;
  for (const [number, { id }] of factor.levels.entries()) {
    const plants = parseWhole(id) ?? 0;
    if (plants >= 1 && plants <= mostPlants) continue;
    isSound = false;
    const place = metadata.place(['factors', index, 'levels', number, 'id']);
    const message = say('the level {level} of {factor} must be a whole number in quotes, such as "3"', {
      level: showText(id),
      factor: plantsPerPotFactor,
    });
    report(rule, { file: 'trial.yaml', place, found: id, message });
  }
  if (!isSound || layout === null || !layout.table?.index.has('plants')) return;
  for (const [at, position] of layout.positions.entries()) {
    const set = plantsPerPot(position.treatment);
    if (
      position.plants === set ||
      !factor.levels.some(({ id }) => id === position.treatment[plantsPerPotFactor])
    )
      continue;
    const message = say('plants is {plants}, but {factor} is {set}; one of the two is wrong', {
      plants: position.plants,
      factor: plantsPerPotFactor,
      set,
    });
    report(rule, {
      file: 'layout.csv',
      place: positionPlace(layout, at, 'plants'),
      found: String(position.plants),
      expected: String(set),
      message,
      where: whereOf(position),
    });
  }
}
