import type { Seasons } from '../../model/generated/seasons.ts';

/**
 * What each trial of a comparison is called where room is short, by its id: its season, and the site that it was
 * gathered from where it is another's; where several trials would be called the same, the trial's id behind it.
 *
 * @example seasonNames(entry.trials).get('autumn-lettuce-2025') // "autumn 2025"
 */
export function seasonNames(
  trials: readonly Pick<Seasons['trials'][number], 'id' | 'season' | 'origin'>[],
): ReadonlyMap<string, string> {
  const named = trials.map(({ id, season, origin }) => ({
    id,
    bare: id.split('/').at(-1)!,
    name: origin === undefined ? season : `${season}, ${origin.title}`,
  }));
  const shared = Map.groupBy(named, ({ name }) => name);
  return new Map(
    named.map(({ id, bare, name }) => [id, shared.get(name)!.length > 1 ? `${name}, ${bare}` : name]),
  );
}
