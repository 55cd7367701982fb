import { showText } from '../../check/show-value.ts';
import { say } from '../../model/say.ts';
import { askedTrial, trialAttribute } from '../asked-trial.ts';
import type { SheetComponent } from '../component.ts';
import { refuseName } from '../refuse.ts';

export const photo: SheetComponent = {
  name: 'Photo',
  stands: 'on its own',
  holds: 'nothing',
  meaning:
    'A photograph of the trial with its caption; it is listed under photos in trial.yaml, where its description stands.',
  attributes: [
    { name: 'file', needed: true, meaning: 'The photograph, as trial.yaml lists it.' },
    { name: 'caption', meaning: 'Another caption than that of trial.yaml.' },
    trialAttribute,
  ],
  example: ({ item }) => {
    const first = item.trial.metadata.photos?.[0];
    return first === undefined ? null : `<Photo file="${first.file}" />`;
  },
  resolve(asked) {
    const item = askedTrial(asked);
    if (item === null) return null;
    const { id, metadata } = item.trial;
    const files = (metadata.photos ?? []).map(({ file }) => file);
    const given = asked.attribute('file') ?? '';
    const index = files.indexOf(given);
    if (index === -1) {
      const fault = say('photos of trial.yaml does not list {name}', { name: showText(given) });
      return refuseName(asked, 'file', fault, given, files);
    }
    return [{ kind: 'photograph', trial: id, index, caption: asked.attribute('caption') }];
  },
};
