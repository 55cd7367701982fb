import { say } from '../../model/say.ts';
import { formatNumber } from '../format/format-number.ts';
import type { Method } from './method.ts';

export const counts: Method = {
  id: 'counts',
  name: 'What became of the plants',
  use: 'Each plant is counted once, by the worst of its cuts. A dead plant, and one that did not regrow, count as 0 in pots and in means per plant set. A plant whose weight is unknown makes its pot’s total unknown. Culled plants and holes never planted are left out of both.',
  formula: ['set = weighed at every cut + not weighed + dead + no regrowth + culled'],
  references: ['Common practice, no source.'],
  example({ findings: { counts: counted } }) {
    const parts = [
      [counted.weighed, 'weighed'],
      [counted.not_weighed, 'not weighed'],
      [counted.dead, 'dead'],
      [counted.no_regrowth, 'no regrowth'],
      [counted.culled, 'culled'],
    ] as const;
    if (counted.set === counted.weighed) return null;
    const shown = parts.filter(([count]) => count > 0).map(([count, what]) => `${count} ${say(what)}`);
    return {
      of: 'all plants',
      steps: [{ name: 'Set', formula: `${formatNumber(counted.set, 0)} = ${shown.join(' + ')}` }],
    };
  },
};
