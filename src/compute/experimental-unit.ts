import type { Position, Trial } from '../model/trial.ts';
import { positionKey } from './position-key.ts';

/** The strata that a treatment can be allotted to, coarsest first. */
export const unitStrata = ['container', 'plot', 'position'] as const;
export type UnitStratum = (typeof unitStrata)[number];

/** Names the unit of a stratum that the position belongs to. A position outside every plot is a plot by itself. */
export function unitOf(position: Position, stratum: UnitStratum): string {
  if (stratum === 'container') return position.container;
  if (stratum === 'plot' && position.plot !== null) return position.plot;
  return positionKey(position);
}

/** The strata that the layout tells apart: plots only where it names some. */
export function strataOf(trial: Trial): UnitStratum[] {
  const hasPlots = trial.positions.some((position) => position.plot !== null);
  return unitStrata.filter((stratum) => stratum !== 'plot' || hasPlots);
}

/**
 * The experimental unit of a factor, read off the layout: the coarsest stratum within which the factor
 * never varies. What was allotted to a container is replicated by containers, however many plants it holds.
 *
 * Reference: S. H. Hurlbert (1984), Pseudoreplication and the design of ecological field experiments,
 * Ecological Monographs 54, 187-211.
 */
export function experimentalUnit(trial: Trial, factor: string): UnitStratum {
  return strataOf(trial).find((stratum) => neverVariesWithin(trial, factor, stratum)) ?? 'position';
}

function neverVariesWithin(trial: Trial, factor: string, stratum: UnitStratum): boolean {
  const levels = new Map<string, string | undefined>();
  return trial.positions.every((position) => {
    const unit = unitOf(position, stratum);
    const level = position.treatment[factor];
    if (!levels.has(unit)) levels.set(unit, level);
    return levels.get(unit) === level;
  });
}

/** The finest experimental unit of any factor: what a treatment combination is replicated by; null without factors. */
export function finestUnit(trial: Trial): UnitStratum | null {
  const units = (trial.metadata.factors ?? []).map(({ id }) =>
    unitStrata.indexOf(experimentalUnit(trial, id)),
  );
  return units.length === 0 ? null : unitStrata[Math.max(...units)]!;
}

/**
 * The unit that replicates whole treatment combinations: that of every factor. Null where factors have
 * different units (a combination's sub-plots then lie in main plots, and are no replicates of it), and
 * without factors.
 */
export function commonUnit(trial: Trial): UnitStratum | null {
  const units = new Set((trial.metadata.factors ?? []).map(({ id }) => experimentalUnit(trial, id)));
  return units.size === 1 ? [...units][0]! : null;
}
