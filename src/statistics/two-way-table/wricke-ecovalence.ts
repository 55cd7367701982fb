import { sum } from '../sum.ts';

/**
 * Wricke's ecovalence of a cultivar: the sum of squares of its residuals from cultivar + trial, its share of
 * the cultivar x trial interaction, in the square of the values' unit. Small is steady. Only cultivars of
 * equally many trials can be compared by it.
 *
 * Reference: Wricke (1962) Zeitschrift fuer Pflanzenzuechtung 47, 92-96.
 *
 * @example wrickeEcovalence([1, -2, 1]) // 6
 */
export function wrickeEcovalence(residuals: readonly number[]): number {
  return sum(residuals.map((residual) => residual * residual));
}
