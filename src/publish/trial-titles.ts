import type { Library } from '../model/library.ts';
import { everyTrial } from './every-trial.ts';
import { madeOnce } from './made-once.ts';

/** What each trial is called in tables across trials, by its id: its title, and its site where it is another's. */
export const trialTitles = madeOnce(
  'trial-titles',
  (library: Library): ReadonlyMap<string, string> =>
    new Map(
      everyTrial(library).map(({ trial: { id, metadata, origin } }) => [
        id,
        origin === undefined ? metadata.title : `${metadata.title} (${origin.title})`,
      ]),
    ),
);
