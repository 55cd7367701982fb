import { drawTimeLine } from '../../draw/time-line.ts';
import { say } from '../../model/say.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { namedFigures } from '../named-figures.ts';
import { refuseNoValue } from '../refuse.ts';

export const timeLine: SheetComponent = {
  name: 'TimeLine',
  stands: 'on its own',
  holds: 'nothing',
  meaning: 'The time line of the trial: its dates, what was noted, and the readings.',
  attributes: [trialAttribute],
  example: () => '<TimeLine />',
  resolve(asked) {
    const item = askedTrial(asked);
    if (item === null) return null;
    const figure = drawTimeLine(item.trial);
    if (figure === null)
      return refuseNoValue(asked, 'trial', say('there is no time line: trial.yaml gives no dates'));
    return [{ kind: 'figures', figures: namedFigures(asked, item.trial, [figure]) }];
  },
};
