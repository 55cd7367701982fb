import { seasonNames } from '../../compute/format/season-names.ts';
import { listed } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { setSpokenOf } from './season-sentence.ts';
import { say, sayCount } from '../../model/say.ts';

/** So many seasons are named; of more, the first and the last. */
const named = 6;

/** What the answer rests on, and which cultivars it is silent about: a sentence each, none where nothing is compared. */
export function restsOnTrials(entry: Seasons, name: (cultivar: string) => string): string[] {
  if (entry.verdict === 'not compared') return [];
  const set = setSpokenOf(entry);
  const counts = new Map<string, number>();
  for (const { cultivar, trial } of entry.cells)
    if (set.includes(cultivar)) counts.set(trial, (counts.get(trial) ?? 0) + 1);
  const shared = entry.trials.filter(({ id }) => (counts.get(id) ?? 0) > 1);
  const alone = entry.trials.filter(({ id }) => counts.get(id) === 1);
  const names = seasonNames(entry.trials);
  const which =
    shared.length > named
      ? say('{from} to {to}', { from: shared[0]!.season, to: shared.at(-1)!.season })
      : listed(shared.map(({ id }) => names.get(id)!));
  const further =
    alone.length === 0
      ? []
      : [
          sayCount(
            alone.length,
            'One further trial grew one of these cultivars alone and cannot tell any two apart.',
            '{count} further trials grew one of these cultivars alone and cannot tell any two apart.',
          ),
        ];
  return [
    say(
      'This rests on {count} trials that had several of these cultivars ({which}){unreplicated}. The trial is the replicate.',
      { count: shared.length, which, unreplicated: unreplicated(shared) },
    ),
    ...further,
    ...refusals(entry, set, name),
  ];
}

function unreplicated(trials: Seasons['trials']): string {
  const count = trials.filter(({ replicated }) => !replicated).length;
  if (count === 0) return '';
  if (count === trials.length) return say('; none of them was replicated');
  return sayCount(count, '; one of them was not replicated', '; {count} of them were not replicated');
}

function refusals(entry: Seasons, set: readonly string[], name: (cultivar: string) => string): string[] {
  const others = entry.linked_sets.filter((each) => !each.some((cultivar) => set.includes(cultivar)));
  return others.map((each) =>
    each.length === 1
      ? say('{cultivar} met no other cultivar in any trial and is compared with none.', {
          cultivar: name(each[0]!),
        })
      : say('{cultivars} met one another but none of the others, and are compared among themselves alone.', {
          cultivars: listed(each.map(name)),
        }),
  );
}
