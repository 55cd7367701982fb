import type { Factor as TrialFactor, Position, Trial } from '../../model/trial.ts';
import type { Factor } from '../../statistics/linear-model/model-terms.ts';
import { experimentalUnit, finestUnit, unitOf, type UnitStratum, unitStrata } from '../experimental-unit.ts';
import { type ErrorStrata, errorStrata } from './error-strata.ts';
import { groupCount, groupIndexes } from './grouping.ts';
import type { Observation } from './observations.ts';

/** A term of treatment factors. */
export interface TreatmentTerm {
  /** The factors' ids joined by a colon. */
  name: string;
  factors: readonly string[];
  /** The experimental unit of the finest of its factors. */
  unit: UnitStratum;
}

/** What is to be fitted to some observations: read off the layout, not declared. */
export interface AnalysisDesign {
  observations: readonly Observation[];
  factors: readonly Factor[];
  /** Level ids by factor id, as the factors' indexes count them. */
  levels: ReadonlyMap<string, readonly string[]>;
  /** Blocks, or the rows and columns of a Latin square; fitted first. */
  blocks: readonly (readonly string[])[];
  terms: readonly TreatmentTerm[];
  errors: ErrorStrata;
  /** The unit of the finest factor. */
  finest: UnitStratum;
}

/** Reads the design of an analysis off the layout of the observations. Needs at least one factor of two levels. */
export function analysisDesign(trial: Trial, observations: readonly Observation[]): AnalysisDesign {
  const varied = (trial.metadata.factors ?? []).filter(
    (factor) => presentLevels(factor, observations).length > 1,
  );
  const levels = new Map(varied.map((factor) => [factor.id, presentLevels(factor, observations)]));
  const treatmentFactors = varied.map(({ id }) => ({
    name: id,
    levels: levels.get(id)!.length,
    values: observations.map(({ position }) => levels.get(id)!.indexOf(position.treatment[id]!)),
  }));
  const blocks = blockFactors(trial, observations);
  const units = new Map(varied.map(({ id }) => [id, experimentalUnit(trial, id)]));
  return {
    observations,
    factors: [...blocks, ...treatmentFactors],
    levels,
    blocks: blocks.map(({ name }) => [name]),
    terms: combinations(varied.map(({ id }) => id)).map((factors) => ({
      name: factors.join(':'),
      factors,
      unit: finestOf(factors.map((id) => units.get(id)!)),
    })),
    errors: errorStrata(trial, observations),
    finest: finestOf([...units.values()]),
  };
}

function presentLevels(factor: TrialFactor, observations: readonly Observation[]): string[] {
  const present = new Set(observations.map(({ position }) => position.treatment[factor.id]));
  return factor.levels.map(({ id }) => id).filter((id) => present.has(id));
}

function finestOf(units: readonly UnitStratum[]): UnitStratum {
  return unitStrata[Math.max(0, ...units.map((unit) => unitStrata.indexOf(unit)))]!;
}

/** Main effects first, then interactions of two factors, of three and so on. */
function combinations(ids: readonly string[]): string[][] {
  const subsets = ids.reduce<string[][]>((sets, id) => [...sets, ...sets.map((set) => [...set, id])], [[]]);
  const rank = (set: readonly string[]) => set.map((id) => ids.indexOf(id));
  return subsets
    .filter((set) => set.length > 0)
    .sort((a, b) => a.length - b.length || compareLists(rank(a), rank(b)));
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}

function blockFactors(trial: Trial, observations: readonly Observation[]): Factor[] {
  const factors = [factorOf('block', observations, ({ block }) => block ?? '')];
  if (trial.metadata.design.arrangement === 'latin square')
    factors.push(...squareFactors(trial, observations));
  return factors.filter(({ levels }) => levels > 1);
}

function factorOf(
  name: string,
  observations: readonly Observation[],
  key: (position: Position) => string,
): Factor {
  const values = groupIndexes(observations.map(({ position }) => key(position)));
  return { name, levels: groupCount(values), values };
}

/**
 * The rows and columns of a Latin square: those of the grid where positions are the units, and the bands of
 * the grid that plots lie in where plots are. Several squares have rows and columns of their own.
 */
function squareFactors(trial: Trial, observations: readonly Observation[]): Factor[] {
  const unit = finestUnit(trial) ?? 'position';
  if (unit === 'container') return [];
  const corners = new Map<string, { row: number; column: number }>();
  for (const position of trial.positions) {
    const key = unitOf(position, unit);
    const corner = corners.get(key);
    corners.set(key, {
      row: Math.min(corner?.row ?? Infinity, position.row),
      column: Math.min(corner?.column ?? Infinity, position.column),
    });
  }
  const band = (side: 'row' | 'column') => (position: Position) =>
    `${position.container} ${corners.get(unitOf(position, unit))![side]}`;
  return [factorOf('row', observations, band('row')), factorOf('column', observations, band('column'))];
}
