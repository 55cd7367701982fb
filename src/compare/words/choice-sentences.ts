import { listed } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import type { Choice } from '../choice/choice.ts';
import type { Offered } from '../choice/offered.ts';

/** What was chosen and what of it takes part, in sentences that stand below the answer; none without a choice. */
export function choiceSentences(choice: Choice, entry: Seasons | null, there: Offered): string[] {
  const filters = filtersOf(choice, there);
  const trials = entry?.trials.length ?? 0;
  const compared = entry?.verdict === 'compared';
  const sentences: string[] = [];
  if (filters.length > 0) {
    const part = trials === there.trials ? 'All' : `${trials} of`;
    sentences.push(
      `Chosen: ${filters.join('; ')}. ${part} the ${there.trials} trials ${trials === 1 ? 'takes' : 'take'} part.`,
    );
  }
  if (choice.weighted) {
    sentences.push(
      'Each mean counts by its own standard error in its trial; means without one, of trials that were not replicated, are left out.',
    );
  }
  if (choice.asSample && compared) {
    sentences.push(
      entry.random_trials.length === 0
        ? 'The trials could not be taken as a sample: what varied between them and within them could not be told apart. The means are those of these trials.'
        : `The trials are taken as a sample of others that might have been (mixed model, REML), so that the limits of a mean hold what differs between trials too${choice.weighted ? '; the standard errors then only decide which means take part' : ''}.`,
    );
  }
  return sentences;
}

function filtersOf(choice: Choice, there: Offered): string[] {
  const { from, to, seasons, settings, cultivars, held } = choice;
  const filters: string[] = [];
  if (cultivars !== null) filters.push(`${cultivars.length} of ${there.cultivars.length} cultivars`);
  if (from !== null && to !== null) filters.push(from === to ? `of ${from}` : `from ${from} to ${to}`);
  else if (from !== null) filters.push(`from ${from} on`);
  else if (to !== null) filters.push(`up to ${to}`);
  if (seasons !== null) filters.push(seasons.length === 0 ? 'no season' : `grown in ${listed(seasons)}`);
  if (settings !== null)
    filters.push(settings.length === 0 ? 'no setting' : `standing in: ${listed(settings)}`);
  if (choice.onlyReplicated) filters.push('only replicated trials');
  for (const { condition } of there.conditions) {
    const value = held[condition.key];
    if (value !== undefined) filters.push(`${condition.label.toLowerCase()}: ${value}`);
  }
  return filters;
}

/**
 * What is announced when the comparison has changed: short, for it is read aloud.
 *
 * @example "4 trials, 3 cultivars. Slate Egret gave the most."
 */
export function announcement(entry: Seasons | null, name: (cultivar: string) => string): string {
  if (entry === null) return 'No trial is left by what is chosen.';
  const count = (number: number, what: string) => `${number} ${what}${number === 1 ? '' : 's'}`;
  const shown = `${count(entry.trials.length, 'trial')}, ${count(entry.adjusted_means.length, 'cultivar')}`;
  if (entry.verdict === 'not compared') return `${shown}. No cultivars can be compared.`;
  const [largest = []] = [...entry.linked_sets].sort((a, b) => b.length - a.length);
  const [best] = entry.adjusted_means
    .filter(({ cultivar }) => largest.includes(cultivar))
    .sort((a, b) => b.mean - a.mean);
  return `${shown}. ${name(best!.cultivar)} gave the most.`;
}
