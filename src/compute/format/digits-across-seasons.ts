import type { Seasons } from '../../model/generated/seasons.ts';
import { digitsOfUncertainty } from './digits-of-uncertainty.ts';

/** A twentieth of a standard error is the least that a reader can tell apart by. Common practice, no source. */
const shareOfError = 20;
/** Without a standard error a mean is printed to about three figures. Common practice, no source. */
const shareOfMean = 500;

/**
 * Decimals of every number of a comparison across seasons, in the entry's unit: no finer than a twentieth of
 * the smallest standard error of an adjusted mean, or about three figures of the smallest mean where there is
 * none. 0 to 6.
 *
 * @example digitsAcrossSeasons(entry) // 0 where means of some 150 g have standard errors of 8 g
 */
export function digitsAcrossSeasons({ adjusted_means: means }: Pick<Seasons, 'adjusted_means'>): number {
  const errors = means.flatMap(({ se }) => (se !== null && se > 0 ? [se / shareOfError] : []));
  const sizes = means.flatMap(({ mean }) => (mean === 0 ? [] : [Math.abs(mean) / shareOfMean]));
  const [steps] = [errors, sizes].filter((each) => each.length > 0);
  return steps === undefined ? 0 : Math.min(6, Math.max(0, digitsOfUncertainty(Math.min(...steps))));
}
