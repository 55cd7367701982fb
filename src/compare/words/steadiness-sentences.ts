import { listed } from '../../compute/words/words.ts';
import type { Seasons } from '../../model/generated/seasons.ts';
import { type EndOfLine, steadinessEnds } from '../steadiness-ends.ts';
import { leastTrials } from '../steadiness.ts';
import { say } from '../../model/say.ts';

/** How steady the cultivars were in plain words, or why that cannot be judged: a sentence each. */
export function steadinessSentences(entry: Seasons, name: (cultivar: string) => string): string[] {
  if (entry.stability.length === 0) {
    const several = entry.trials.filter(({ cultivars }) => cultivars > 1).length;
    const there =
      [say('there is none'), say('there is one')][several] ?? say('there are {count}', { count: several });
    return [
      say(
        'How steady a cultivar is cannot be judged: that takes at least {least} trials in which the same cultivars met, and of trials with several cultivars {there}.',
        { least: leastTrials, there },
      ),
    ];
  }
  const judged = entry.stability.map(({ cultivar }) => ({
    cultivar: name(cultivar),
    did: inSeasons(steadinessEnds(entry, cultivar)),
  }));
  const alike = Map.groupBy(judged, ({ did }) => did);
  return [
    ...[...alike]
      .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
      .map(([did, cultivars]) =>
        say('{cultivars} {did}.', {
          cultivars: listed(cultivars.map(({ cultivar }) => cultivar)),
          did: say(did),
        }),
      ),
    say(
      'Better and worse are by each cultivar’s own 95% limits where its line meets the poorest and the best of its trials.',
    ),
  ];
}

const unknown = 'cannot be judged: the trials did not differ enough in yield';
const alikeThroughout =
  'could be told neither better nor worse than the trials’ average in good or in poor seasons';

/** What is said first is what a grower can use. */
const order = [
  'did better than the trials’ average in good seasons and in poor ones',
  'did better than the trials’ average in good seasons, no worse in poor ones',
  'did better than the trials’ average in poor seasons, no worse in good ones',
  'did better than the trials’ average in good seasons, worse in poor ones',
  'did better than the trials’ average in poor seasons, worse in good ones',
  alikeThroughout,
  'did worse than the trials’ average in poor seasons, no better in good ones',
  'did worse than the trials’ average in good seasons, no better in poor ones',
  'did worse than the trials’ average in good seasons and in poor ones',
  unknown,
];

/** An end of a cultivar's line is above or below the average only where its limits leave out zero. */
function inSeasons(ends: ReturnType<typeof steadinessEnds>): string {
  if (ends === null) return unknown;
  const [good, poor] = [side(ends.good), side(ends.poor)];
  if (good === 0 && poor === 0) return alikeThroughout;
  const word = (of: number) => (of > 0 ? 'better' : 'worse');
  if (good === poor) return `did ${word(good)} than the trials’ average in good seasons and in poor ones`;
  const [first, second] =
    good === 1 || (good === -1 && poor === 0)
      ? ([['good', good] as const, ['poor', poor] as const] as const)
      : ([['poor', poor] as const, ['good', good] as const] as const);
  const then = second[1] === 0 ? (first[1] > 0 ? 'no worse' : 'no better') : word(second[1]);
  return `did ${word(first[1])} than the trials’ average in ${first[0]} seasons, ${then} in ${second[0]} ones`;
}

function side({ lower, upper }: EndOfLine): -1 | 0 | 1 {
  return lower > 0 ? 1 : upper < 0 ? -1 : 0;
}
