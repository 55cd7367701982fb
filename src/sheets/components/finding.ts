import { findingSentence } from '../../compute/words/finding-sentence.ts';
import { restsOnSentence } from '../../compute/words/rests-on-sentence.ts';
import { askedFindings, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';

export const finding: SheetComponent = {
  name: 'Finding',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'The finding of the trial in the sentences of its own page: what differed and by how much, or that nothing was tested, and what it rests on.',
  attributes: [
    { name: 'rests', choices: ['no'], meaning: 'no leaves out the sentence on what the finding rests on.' },
    trialAttribute,
  ],
  example: () => '<Finding />',
  resolve(asked) {
    const found = askedFindings(asked);
    if (found === null) return null;
    const { trial, findings } = found;
    const rests = asked.attribute('rests') === 'no' ? [] : [restsOnSentence(trial, findings)];
    const sentences = [findingSentence(trial, findings, asked.library.cultivars), ...rests];
    return [{ kind: 'sentences', sentences, finding: true }];
  },
};
