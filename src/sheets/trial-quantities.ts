import { showText } from '../check/show-value.ts';
import type { Findings } from '../model/findings.ts';
import { say } from '../model/say.ts';
import type { FindQuantity } from './quantity.ts';
import { refuseMissing, refuseName } from './refuse.ts';

/** How many plants of the whole trial met with what: set, weighed, dead and so on. */
export function ofCounts(key: keyof Findings['counts']): FindQuantity {
  return (_asked, { findings }) => ({
    value: findings.counts[key],
    unit: '',
    digits: 0,
    anchor: 'treatments',
  });
}

/** How many containers, pots or plants the trial had in all. */
export function inAll(what: 'containers' | 'pots'): FindQuantity {
  return (_asked, { trial }) => {
    const value = what === 'containers' ? trial.metadata.containers.length : trial.positions.length;
    return { value, unit: '', digits: 0, anchor: 'how-grown' };
  };
}

/** Water used by a container: litres, or litres for each kg of fresh weight. */
export function ofWater(key: 'used_L' | 'L_per_kg'): FindQuantity {
  return (asked, { trial, findings }) => {
    const id = asked.attribute('container');
    const containers = trial.metadata.containers.map((each) => each.id);
    if (id === null) {
      return refuseMissing(
        asked,
        'container',
        say('water is told by the container; write container="{container}"', {
          container: containers[0] ?? '',
        }),
      );
    }
    if (!containers.includes(id))
      return refuseName(
        asked,
        'container',
        say('the trial has no container {name}', { name: showText(id) }),
        id,
        containers,
      );
    const entry = findings.water.find(({ container }) => container === id);
    return {
      value: entry?.[key] ?? null,
      reason: entry?.reason ?? say('the trial has no readings of its water level'),
      unit: key === 'used_L' ? 'L' : 'L/kg',
      digits: Number(asked.attribute('digits') ?? (key === 'used_L' ? 0 : 1)),
      anchor: 'how-grown',
    };
  };
}
