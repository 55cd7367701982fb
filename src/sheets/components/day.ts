import { showText } from '../../check/show-value.ts';
import { formatDate } from '../../compute/format/format-date.ts';
import { say } from '../../model/say.ts';
import { cutAttribute } from '../asked-treatment.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { wordsPiece } from '../piece.ts';
import { refuseName, refuseNoValue } from '../refuse.ts';

export const day: SheetComponent = {
  name: 'Day',
  stands: 'in a sentence',
  holds: 'nothing',
  meaning: 'A day of the trial as trial.yaml gives it.',
  attributes: [
    {
      name: 'of',
      needed: true,
      choices: ['sown', 'germinated', 'transplanted', 'cut', 'released'],
      meaning:
        'Which day: of sowing, germination, planting out, a cut, or the release of this version of the data.',
    },
    { ...cutAttribute, meaning: 'Which cut, by its number; the last one where it is left out.' },
    trialAttribute,
  ],
  example: () => say('Cut on {day}.', { day: '<Day of="cut" />' }),
  resolve(asked) {
    const item = askedTrial(asked);
    if (item === null) return null;
    const { id, metadata } = item.trial;
    const { dates, releases, version } = metadata;
    const of = asked.attribute('of') ?? '';
    const path = `trials/${id}/#how-grown`;
    let date: string | undefined;
    if (of === 'cut') {
      const given = asked.attribute('cut');
      const cuts = dates?.cuts ?? [];
      date = given === null || given === 'all' ? cuts.at(-1) : cuts[Number(given) - 1];
      const numbers = cuts.map((_, index) => String(index + 1));
      if (date === undefined && given !== null && cuts.length > 0)
        return refuseName(
          asked,
          'cut',
          say('the trial has no cut {name}', { name: showText(given) }),
          given,
          numbers,
        );
    } else if (of === 'released') date = releases?.find((each) => each.version === version)?.date;
    else date = dates?.[of as 'sown' | 'germinated' | 'transplanted'];
    if (date === undefined) return refuseNoValue(asked, 'of', notSaid(of));
    return wordsPiece([formatDate(date)], of === 'released' ? `trials/${id}/#data` : path);
  },
};

function notSaid(day: string): string {
  switch (day) {
    case 'sown':
      return say('trial.yaml does not say when it was sown');
    case 'germinated':
      return say('trial.yaml does not say when it was germinated');
    case 'transplanted':
      return say('trial.yaml does not say when it was transplanted');
    case 'cut':
      return say('trial.yaml does not say when it was cut');
    default:
      return say('trial.yaml does not say when it was released');
  }
}
