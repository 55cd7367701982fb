import { citationSentence } from '../../publish/citation-sentence.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { wordsPiece } from '../piece.ts';
import { refuseNoValue } from '../refuse.ts';
import { say } from '../../model/say.ts';

export const citation: SheetComponent = {
  name: 'Citation',
  stands: 'either',
  holds: 'nothing',
  meaning:
    'The trial as a source. In a sentence: its title and the version of its data, leading to its page. On lines of its own: how to cite its data in full.',
  attributes: [trialAttribute],
  example: () => '<Citation />',
  resolve(asked) {
    const item = askedTrial(asked);
    if (item === null) return null;
    const { id, metadata } = item.trial;
    const path = `trials/${id}/`;
    if (asked.inline) {
      const version = say(' (version {version})', { version: metadata.version });
      return wordsPiece([metadata.title], path, [version]);
    }
    if (item.findings === null) {
      return refuseNoValue(
        asked,
        'trial',
        say('the trial is {status}, so that there is no dataset to cite yet', {
          status: say(metadata.status),
        }),
      );
    }
    return [{ kind: 'citation', sentence: citationSentence(item, asked.library), path: `data/${id}/` }];
  },
};
