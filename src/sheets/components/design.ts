import { datesOf } from '../../compute/growing/dates-of.ts';
import { designInWords, placeInWords } from '../../publish/described-in-words.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';

export const design: SheetComponent = {
  name: 'Design',
  stands: 'on its own',
  holds: 'nothing',
  meaning: 'How the trial was laid out, where it stood and its dates, as trial.yaml says.',
  attributes: [trialAttribute],
  example: () => '<Design />',
  resolve(asked) {
    const item = askedTrial(asked);
    if (item === null) return null;
    const { metadata } = item.trial;
    const place = `${placeInWords(metadata.site)}, ${metadata.site.setting}.`;
    const dates = datesOf(item.trial).map(({ name, text }) => `${name} ${text}`);
    const when = dates.length === 0 ? [] : [[`${dates.join('; ')}.`]];
    return [
      { kind: 'sentences', sentences: [[`${designInWords(metadata)} ${place}`], ...when], finding: false },
    ];
  },
};
