import type { LotUnit } from '../compute/lots/lot-place.ts';
import type { Factor, TrialMetadata, Variable } from '../model/trial.ts';

/** What may stand over the containers, and what kinds of them there are, as trial.yaml has them. */
export const settings = ['open air', 'rain shelter', 'shade house', 'greenhouse', 'indoors'] as const;
export const kinds = ['tank', 'tray', 'gutter', 'bed', 'bench'] as const;

/** A container that the grower has, with its grid. */
export interface PlanContainer {
  id: string;
  rows: number;
  columns: number;
  /** Containers alike in light, age or place, where the grower knows some to be. */
  block?: string;
}

/** What a grower knows before a trial. */
export interface PlanRequest {
  /** The folder's name. */
  id: string;
  title: string;
  question: string;
  crop: TrialMetadata['crop'];
  season: TrialMetadata['season'];
  site: TrialMetadata['site'];
  people: TrialMetadata['people'];
  licence: string;
  /** Each with its levels and, where there is one, its check; at least one. */
  factors: readonly Factor[];
  containers: readonly PlanContainer[];
  kind: TrialMetadata['containers'][number]['kind'];
  /** What treatments can be allotted to here. */
  allot: readonly LotUnit[];
  /** Factors, by id, that can be allotted to nothing but this: what is dissolved in a tank, to the tank. */
  only: Readonly<Record<string, LotUnit>>;
  /** Positions of a plot, needed where plots can be allotted. */
  plot?: { rows: number; columns: number };
  /** Rings of positions along the edge that take no part. */
  border: number;
  /** How many seedlings there will be; null where they are no limit. */
  seedlings: number | null;
  /** The size of each seedling in the order of their numbers, to allot them graded; null where they are not graded. */
  sizes: readonly number[] | null;
  /** Whether the grower insists on a trial that nothing can be concluded from. */
  unreplicated: boolean;
  variables: readonly Variable[];
}

/** How many treatments there are: every combination of the factors' levels. */
export function treatmentCount(factors: readonly Factor[]): number {
  return factors.reduce((product, { levels }) => product * levels.length, 1);
}
