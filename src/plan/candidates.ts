import type { LotUnit } from '../compute/lots/lot-place.ts';
import { listed } from '../compute/words/words.ts';
import { say } from '../model/say.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { type PlanContainer, type PlanRequest, treatmentCount } from './plan-request.ts';

type Arrangement = TrialMetadata['design']['arrangement'];

/** A way of laying the trial out that the numbers allow. */
export interface Candidate {
  arrangement: Arrangement;
  /** What each factor is allotted to, in the order of the factors. */
  units: readonly LotUnit[];
  /** What is a block: nothing, each container by itself, or the blocks that the grower gave. */
  blocks: 'none' | 'containers' | 'given';
}

/** A way that does not work, and why, in a grower's words. */
export interface Refusal {
  /** Without a full stop. */
  reason: string;
  /** Whether it can be laid out all the same, unreplicated, by a grower who insists. */
  insist?: true;
}

/**
 * The arrangements that the containers allow, those first that take out most of what differs without the treatments
 * (blocks and squares before complete randomisation), and why others were refused.
 */
export function candidatesOf(request: PlanRequest): { candidates: Candidate[]; refusals: Refusal[] } {
  const { factors, allot, only, plot } = request;
  const candidates: Candidate[] = [];
  const refusals: Refusal[] = [];
  const all = (unit: LotUnit) => factors.map(() => unit);
  for (const unit of ['position', 'plot', 'container'] as const) {
    // What is bound to another unit can only be part of a split plot.
    if (!allot.includes(unit) || factors.some(({ id }) => (only[id] ?? unit) !== unit)) continue;
    if (unit === 'plot' && plot === undefined) {
      refusals.push({
        reason: say('plots can be allotted, but how many rows and columns make a plot is not said'),
      });
      continue;
    }
    const found = unit === 'container' ? ofContainers(request) : withinContainers(request, unit);
    if ('reason' in found) refusals.push(found);
    else candidates.push(...found.map((one) => ({ ...one, units: all(unit) })));
  }
  candidates.push(...splitPlots(request));
  if (candidates.length === 0 && refusals.length === 0) refusals.push({ reason: noSplit(request) });
  // A square of three leaves two degrees of freedom, too few to be the first choice.
  const squareFirst = treatmentCount(factors) > 3;
  const order: readonly Arrangement[] = [
    'randomised blocks',
    ...(squareFirst ? (['latin square'] as const) : []),
    'split plot',
    'completely randomised',
    'latin square',
    'unreplicated',
  ];
  candidates.sort((a, b) => order.indexOf(a.arrangement) - order.indexOf(b.arrangement));
  return { candidates, refusals };
}

type Found = Omit<Candidate, 'units'>[] | Refusal;

/** Treatments side by side in a container, by position or by plot. */
function withinContainers(request: PlanRequest, unit: 'position' | 'plot'): Found {
  const { containers, factors } = request;
  const treatments = treatmentCount(factors);
  const counts = containers.map((container) => unitsWithin(container, request, unit));
  const total = sum(counts);
  const found: Omit<Candidate, 'units'>[] = [];
  if (containers.every((container) => isSquareOf(container, request, unit, treatments)))
    found.push({ arrangement: 'latin square', blocks: 'none' });
  const given = givenBlocks(containers);
  const even = (count: number) => count > 0 && count % treatments === 0;
  if (
    given !== null &&
    given.every((block) => even(sum(block.map((one) => unitsWithin(one, request, unit)))))
  )
    found.push({ arrangement: 'randomised blocks', blocks: 'given' });
  else if (containers.length > 1 && counts.every(even))
    found.push({ arrangement: 'randomised blocks', blocks: 'containers' });
  // Where blocks can be had, drawing lots over all containers at once could only lose by it.
  if (!found.some(({ blocks }) => blocks !== 'none') && even(total) && total >= 2 * treatments)
    found.push({ arrangement: 'completely randomised', blocks: 'none' });
  if (found.length > 0) return found;
  return { reason: unevenly(treatments, total, unit) };
}

/** One treatment for a whole container. */
function ofContainers({ containers, factors, unreplicated }: PlanRequest): Found {
  const treatments = treatmentCount(factors);
  const count = containers.length;
  if (count === treatments) {
    if (unreplicated) return [{ arrangement: 'unreplicated', blocks: 'none' }];
    return {
      reason: say(
        'one container for each of {treatments} treatments cannot tell the treatment from the container: whatever else differs between two tanks (light, leaks, warmth, hands) would pass for the treatment. Take at least two containers for each, or allot positions within containers where the treatment allows it. To lay it out all the same, marked as unreplicated and described only, insist',
        { treatments },
      ),
      insist: true,
    };
  }
  if (count < treatments || count % treatments !== 0)
    return { reason: unevenly(treatments, count, 'container') };
  const given = givenBlocks(containers);
  const found: Omit<Candidate, 'units'>[] = [];
  if (given?.every((block) => block.length % treatments === 0) === true)
    found.push({ arrangement: 'randomised blocks', blocks: 'given' });
  return [...found, { arrangement: 'completely randomised', blocks: 'none' }];
}

/** Factors bound to containers (or else the first) by whole containers, the others within them. */
function splitPlots(request: PlanRequest): Candidate[] {
  const { allot, factors, only, containers, plot } = request;
  const bound = factors.filter(({ id }) => only[id] === 'container');
  const coarse = bound.length > 0 ? bound : factors.slice(0, 1);
  const fine = factors.filter((factor) => !coarse.includes(factor));
  if (fine.length === 0 || (bound.length === 0 && !allot.includes('container'))) return [];
  const levels = treatmentCount(coarse);
  const given = givenBlocks(containers);
  const inBlocks = given?.every((block) => block.length % levels === 0) === true;
  if (containers.length % levels !== 0 || containers.length < 2 * levels) return [];
  return (['position', 'plot'] as const).flatMap((unit): Candidate[] => {
    if (!allot.includes(unit) || (unit === 'plot' && plot === undefined)) return [];
    if (fine.some(({ id }) => (only[id] ?? unit) !== unit)) return [];
    const within = containers.map((container) => unitsWithin(container, request, unit));
    if (!within.every((count) => count > 0 && count % treatmentCount(fine) === 0)) return [];
    const units = factors.map((factor): LotUnit => (coarse.includes(factor) ? 'container' : unit));
    return [{ arrangement: 'split plot', units, blocks: inBlocks ? 'given' : 'none' }];
  });
}

/** The containers of each block; null where not every one has a block, or there is only one. */
function givenBlocks(containers: readonly PlanContainer[]): PlanContainer[][] | null {
  if (containers.some(({ block }) => block === undefined)) return null;
  const blocks = [...Map.groupBy(containers, ({ block }) => block).values()];
  return blocks.length < 2 ? null : blocks;
}

/** Units inside the border; 0 where plots do not fill it. */
function unitsWithin(
  container: PlanContainer,
  { border, plot }: PlanRequest,
  unit: 'position' | 'plot',
): number {
  const [rows, columns] = [container.rows - 2 * border, container.columns - 2 * border];
  if (rows < 1 || columns < 1) return 0;
  if (unit === 'position' || plot === undefined) return rows * columns;
  const fills = rows % plot.rows === 0 && columns % plot.columns === 0;
  return fills ? (rows / plot.rows) * (columns / plot.columns) : 0;
}

function isSquareOf(
  container: PlanContainer,
  request: PlanRequest,
  unit: 'position' | 'plot',
  size: number,
): boolean {
  const { border, plot } = request;
  const side = unit === 'plot' ? plot : { rows: 1, columns: 1 };
  if (side === undefined || size < 3) return false;
  return (
    container.rows - 2 * border === size * side.rows && container.columns - 2 * border === size * side.columns
  );
}

function unevenly(treatments: number, units: number, unit: LotUnit): string {
  return say(
    '{treatments} treatments cannot be shared out evenly over {count} {unit}, at least two for each; change a grid, plan a border, or take other numbers of treatments or containers',
    { treatments, count: units, unit: say(units === 1 ? unit : `${unit}s`) },
  );
}

function noSplit({ factors, containers }: PlanRequest): string {
  return say(
    '{containers} containers do not allow {factors} to be allotted as they must be: a factor of whole containers takes at least two containers for each of its levels, and each container room for every level of the others',
    { containers: containers.length, factors: listed(factors.map(({ name }) => name.toLowerCase())) },
  );
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
