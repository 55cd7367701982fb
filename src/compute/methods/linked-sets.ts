import { say } from '../../model/say.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { seasonNames } from '../format/season-names.ts';
import { listed } from '../words/words.ts';
import type { Method } from './method.ts';

export const linkedSets: Method = {
  id: 'linked-sets',
  name: 'Linked sets of cultivars',
  use: 'Which cultivars may be compared at all. Two that stood in one trial are linked, and so are two that a chain of such trials connects: A beside B in one, B beside C in another. Between cultivars that no chain connects any difference may be the seasons’, and none is told.',
  formula: [
    'begin with each cultivar as a set of its own',
    'for each trial: join the sets of all cultivars that it grew',
    'what is left are the linked sets',
  ],
  remarks: [
    'A trial of one cultivar links nothing.',
    'One check cultivar in every trial links them all: this is what a check is for.',
  ],
  references: [
    'J. A. John and E. R. Williams (1995), Cyclic and Computer Generated Designs, 2nd ed., section 1.3 (connected designs).',
  ],
  example: () => null,
  across(entries, name) {
    const entry = [...entries].sort((a, b) => b.linked_sets.length - a.linked_sets.length)[0];
    if (!entry) return null;
    return {
      species: entry.species,
      of: 'the sets and the trials that link them',
      steps: entry.linked_sets.map((set, index) => ({
        name: say('Set {number}', { number: index + 1 }),
        formula: `${listed(set.map(name))}: ${linksOf(entry, set, name)}`,
      })),
    };
  },
};

function linksOf(entry: Seasons, set: readonly string[], name: (cultivar: string) => string): string {
  const seasons = seasonNames(entry.trials);
  const links = entry.trials.flatMap(({ id }) => {
    const grown = entry.cells.filter(({ trial, cultivar }) => trial === id && set.includes(cultivar));
    return grown.length < 2
      ? []
      : [`${seasons.get(id)!} (${grown.map(({ cultivar }) => name(cultivar)).join(', ')})`];
  });
  return links.length === 0
    ? say('no trial grew it beside another')
    : say('linked by {trials}', { trials: links.join('; ') });
}
