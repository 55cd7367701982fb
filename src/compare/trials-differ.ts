import type { Seasons } from '../model/generated/seasons.ts';
import type { TrialCells } from './season-cells.ts';

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
    const each = measure === 'per_pot' ? ', and a pot of several plants gives more than a pot of one' : '';
    sentences.push(`Plants in a pot were not the same in all trials (${crowding.join('; ')})${each}.`);
  }
  const cuts = distinct((trial) => String(trial.cuts));
  if (cuts.length > 1)
    sentences.push(`Some trials were cut more often than others (${cuts.join(', ')} cuts).`);
  const variables = distinct(({ variable }) => variable.toLowerCase());
  if (variables.length > 1) sentences.push(`Not all trials weighed the same: ${variables.join('; ')}.`);
  const settings = distinct(({ setting }) => setting);
  if (settings.length > 1) sentences.push(`The trials stood in different places: ${settings.join(', ')}.`);
  for (const { season, averaged_over: over } of trials) {
    if (over !== '') sentences.push(`The means of ${season} are averaged over ${over}.`);
  }
  const origins = Map.groupBy(
    trials.flatMap(({ origin }) => origin ?? []),
    ({ title }) => title,
  );
  for (const [title, { length }] of origins) {
    sentences.push(
      `${length} of the trials ${length === 1 ? 'was' : 'were'} gathered from another site, ${title}: other hands, scales and water.`,
    );
  }
  return sentences;
}
