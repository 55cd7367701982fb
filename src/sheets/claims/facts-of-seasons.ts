import type { Seasons } from '../../model/generated/seasons.ts';
import { say } from '../../model/say.ts';
import type { Fact, FactKind } from './fact.ts';
import type { Dimension } from './typed-quantity.ts';

/** Every number of the comparison of seasons, for sheets across trials. Cultivars are told by their names alone. */
export function factsOfSeasons(entry: Seasons, name: (cultivar: string) => string): Fact[] {
  const dimension: Dimension = entry.measure === 'kg_per_m2' ? 'kg/m2' : 'g';
  const measure = entry.measure === 'kg_per_m2' ? null : entry.measure;
  if (entry.measure !== 'kg_per_m2' && entry.unit !== 'g') return [];
  const fact = (
    value: number | null,
    kind: FactKind,
    words: () => string,
    of: Dimension = dimension,
  ): Fact[] =>
    value === null ? [] : [{ value, dimension: of, kind, words, treatments: [], measure, component: null }];
  return [
    ...entry.cells.flatMap(({ cultivar, trial, percent_of_check: percent }) =>
      fact(
        percent,
        'mean',
        () =>
          say('the percentage of the check of {cultivar} in {trial}', { cultivar: name(cultivar), trial }),
        '%',
      ),
    ),
    ...entry.adjusted_means.flatMap(({ cultivar, mean, lower, upper, se }) => [
      ...fact(mean, 'mean', () =>
        say('the mean over the seasons of {cultivar}', { cultivar: name(cultivar) }),
      ),
      ...fact(lower, 'limits', () =>
        say('the lower limit of the mean over the seasons of {cultivar}', { cultivar: name(cultivar) }),
      ),
      ...fact(upper, 'limits', () =>
        say('the upper limit of the mean over the seasons of {cultivar}', { cultivar: name(cultivar) }),
      ),
      ...fact(se, 'spread', () =>
        say('the standard error over the seasons of {cultivar}', { cultivar: name(cultivar) }),
      ),
    ]),
    ...entry.differences.flatMap(({ a, b, estimate, lower, upper }) => [
      ...fact(estimate, 'difference', () =>
        say('the difference over the seasons between {a} and {b}', { a: name(a), b: name(b) }),
      ),
      ...fact(lower, 'limits', () =>
        say('a limit of the difference over the seasons between {a} and {b}', { a: name(a), b: name(b) }),
      ),
      ...fact(upper, 'limits', () =>
        say('a limit of the difference over the seasons between {a} and {b}', { a: name(a), b: name(b) }),
      ),
    ]),
  ];
}
