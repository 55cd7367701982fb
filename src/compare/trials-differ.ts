import type { Seasons } from '../model/generated/seasons.ts';
import type { TrialCells } from './season-cells.ts';
import { say, sayCount } from '../model/say.ts';

type SeasonTrial = TrialCells['trial'];

/**
 * In what the trials are not alike, a sentence each: a comparison over unlike trials holds for their mixture.
 * Nothing is mixed without being said here.
 */
export function trialsDiffer(trials: readonly SeasonTrial[], measure: Seasons['measure']): string[] {
  const distinct = (of: (trial: SeasonTrial) => string) => [...new Set(trials.map(of))];
  const sentences: string[] = [];
  const crowding = distinct(({ plants_per_pot: plants }) => plants);
  if (crowding.length > 1 || crowding.some((plants) => plants.includes(','))) {
    sentences.push(
      say(
        measure === 'per_pot'
          ? 'Plants in a pot were not the same in all trials ({plants}), and a pot of several plants gives more than a pot of one.'
          : 'Plants in a pot were not the same in all trials ({plants}).',
        { plants: crowding.join('; ') },
      ),
    );
  }
  const cuts = distinct((trial) => String(trial.cuts));
  if (cuts.length > 1)
    sentences.push(
      say('Some trials were cut more often than others ({cuts} cuts).', { cuts: cuts.join(', ') }),
    );
  const variables = distinct(({ variable }) => variable.toLowerCase());
  if (variables.length > 1)
    sentences.push(say('Not all trials weighed the same: {variables}.', { variables: variables.join('; ') }));
  const settings = distinct(({ setting }) => setting);
  if (settings.length > 1)
    sentences.push(
      say('The trials stood in different places: {settings}.', {
        settings: settings.map((setting) => say(setting)).join(', '),
      }),
    );
  for (const { season, averaged_over: over } of trials) {
    if (over !== '') sentences.push(say('The means of {season} are averaged over {over}.', { season, over }));
  }
  const origins = Map.groupBy(
    trials.flatMap(({ origin }) => origin ?? []),
    ({ title }) => title,
  );
  for (const [title, { length }] of origins) {
    sentences.push(
      sayCount(
        length,
        '{count} of the trials was gathered from another site, {title}: other hands, scales and water.',
        '{count} of the trials were gathered from another site, {title}: other hands, scales and water.',
        { title },
      ),
    );
  }
  return sentences;
}
