import { allCautions, cautionsOf } from '../../compute/cautions/cautions-of.ts';
import { say } from '../../model/say.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { refuseNoValue } from '../refuse.ts';

export const cautions: SheetComponent = {
  name: 'Cautions',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'All the cautions of the reviewed list that the trial calls for by what it contains; in a sheet across trials, those that any of its trials calls for.',
  attributes: [trialAttribute],
  example: () => '<Cautions />',
  resolve(asked) {
    const { own, library, trials } = asked;
    const isOfAll = own === null && asked.attribute('trial') === null;
    const one = isOfAll ? null : askedTrial(asked);
    if (!isOfAll && one === null) return null;
    const items = one === null ? library.trials.filter(({ trial }) => trials.includes(trial.id)) : [one];
    const called = new Set(items.flatMap(({ trial }) => cautionsOf(trial)));
    const found = allCautions.filter((each) => called.has(each));
    if (found.length === 0)
      return refuseNoValue(asked, 'trial', say('nothing in the trial calls for a caution of the list'));
    return [{ kind: 'cautions', cautions: found }];
  },
};
