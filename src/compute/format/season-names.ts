import type { Seasons } from '../../model/generated/seasons.ts';

/**
 * What each trial of a comparison is called where room is short, by its id: its season; where several trials
 * share a season, the trial's id behind it.
 *
 * @example seasonNames(entry.trials).get('autumn-lettuce-2025') // "autumn 2025"
 */
export function seasonNames(trials: Seasons['trials']): ReadonlyMap<string, string> {
  const shared = Map.groupBy(trials, ({ season }) => season);
  return new Map(
    trials.map(({ id, season }) => [id, shared.get(season)!.length > 1 ? `${season}, ${id}` : season]),
  );
}
