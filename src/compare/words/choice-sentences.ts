import { listed } from '../../compute/words/words.ts';
import { say, sayCount } from '../../model/say.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import type { Choice } from '../choice/choice.ts';
import { conditionWords } from '../choice/conditions.ts';
import type { Offered } from '../choice/offered.ts';

/** What was chosen and what of it takes part, in sentences that stand below the answer; none without a choice. */
export function choiceSentences(choice: Choice, entry: Seasons | null, there: Offered): string[] {
  const filters = filtersOf(choice, there);
  const trials = entry?.trials.length ?? 0;
  const compared = entry?.verdict === 'compared';
  const sentences: string[] = [];
  if (filters.length > 0) {
    const chosen = filters.join('; ');
    sentences.push(
      trials === there.trials
        ? say('Chosen: {chosen}. All the {all} trials take part.', { chosen, all: trials })
        : sayCount(
            trials,
            'Chosen: {chosen}. {count} of the {all} trials takes part.',
            'Chosen: {chosen}. {count} of the {all} trials take part.',
            { chosen, all: there.trials },
          ),
    );
  }
  if (choice.weighted) {
    sentences.push(
      say(
        'Each mean counts by its own standard error in its trial; means without one, of trials that were not replicated, are left out.',
      ),
    );
  }
  if (choice.asSample && compared) {
    sentences.push(
      entry.random_trials.length === 0
        ? say(
            'The trials could not be taken as a sample: what varied between them and within them could not be told apart. The means are those of these trials.',
          )
        : say(
            choice.weighted
              ? 'The trials are taken as a sample of others that might have been (mixed model, REML), so that the limits of a mean hold what differs between trials too; the standard errors then only decide which means take part.'
              : 'The trials are taken as a sample of others that might have been (mixed model, REML), so that the limits of a mean hold what differs between trials too.',
          ),
    );
  }
  return sentences;
}

function filtersOf(choice: Choice, there: Offered): string[] {
  const { from, to, seasons, settings, cultivars, held } = choice;
  const filters: string[] = [];
  if (cultivars !== null)
    filters.push(say('{some} of {all} cultivars', { some: cultivars.length, all: there.cultivars.length }));
  if (from !== null && to !== null)
    filters.push(from === to ? say('of {year}', { year: from }) : say('from {from} to {to}', { from, to }));
  else if (from !== null) filters.push(say('from {from} on', { from }));
  else if (to !== null) filters.push(say('up to {to}', { to }));
  if (seasons !== null)
    filters.push(
      seasons.length === 0 ? say('no season') : say('grown in {seasons}', { seasons: listed(seasons) }),
    );
  if (settings !== null)
    filters.push(
      settings.length === 0
        ? say('no setting')
        : say('standing in: {settings}', { settings: listed(settings.map((setting) => say(setting))) }),
    );
  if (choice.onlyReplicated) filters.push(say('only replicated trials'));
  for (const { condition } of there.conditions) {
    const value = held[condition.key];
    if (value !== undefined) filters.push(`${lowerFirst(say(condition.label))}: ${conditionWords(value)}`);
  }
  return filters;
}

/**
 * What is announced when the comparison has changed: short, for it is read aloud.
 *
 * @example "4 trials, 3 cultivars. Slate Egret gave the most."
 */
export function announcement(entry: Seasons | null, name: (cultivar: string) => string): string {
  if (entry === null) return say('No trial is left by what is chosen.');
  const trials = sayCount(entry.trials.length, '{count} trial', '{count} trials');
  const cultivars = sayCount(entry.adjusted_means.length, '{count} cultivar', '{count} cultivars');
  const shown = `${trials}, ${cultivars}`;
  if (entry.verdict === 'not compared') return `${shown}. ${say('No cultivars can be compared.')}`;
  const [largest = []] = [...entry.linked_sets].sort((a, b) => b.length - a.length);
  const [best] = entry.adjusted_means
    .filter(({ cultivar }) => largest.includes(cultivar))
    .sort((a, b) => b.mean - a.mean);
  return `${shown}. ${say('{cultivar} gave the most.', { cultivar: name(best!.cultivar) })}`;
}

/** Only the first letter: units stand as they are. */
const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
