import type { Seasons } from '../model/generated/seasons.ts';
import type { Cultivar, TrialWithFindings } from '../model/library.ts';
import { compareGroup, type SeasonOptions } from './compare-group.ts';
import { seasonGroups } from './season-groups.ts';

/**
 * Cultivars compared across seasons: one entry for each crop and measure that any trial has. The trial is
 * the replicate: cultivar + trial, additive, by least squares on the trials' own means, so that a cultivar
 * is not favoured by the trials it happened to be in. Cultivars that no chain of shared trials connects are
 * never compared.
 *
 * Reference: H. D. Patterson (1978), Journal of the National Institute of Agricultural Botany 14, 401-412.
 *
 * @param options.known the site's list of cultivars, by which a name or synonym is known
 */
export function seasons(
  trials: readonly TrialWithFindings[],
  options: SeasonOptions & { known?: readonly Cultivar[] } = {},
): Seasons[] {
  return seasonGroups(trials, options.known).flatMap((group) => compareGroup(group, options) ?? []);
}
