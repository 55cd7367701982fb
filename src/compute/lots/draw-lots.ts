import { say, sayCount } from '../../model/say.ts';
import type { TrialMetadata, Treatment } from '../../model/trial.ts';
import { type SeededRandom, seededRandom } from '../../statistics/seeded-random.ts';
import { drawSquares } from './draw-squares.ts';
import { blocksOf, inOrderOfLots, type LotPlace, type LotUnit, lotUnits, unitsOf } from './lot-place.ts';
import { evenTreatments, type LotFactor, sortedTreatments } from './treatment-list.ts';

/** The name that trial.yaml gives this way of drawing (`design.lot.method`); another way needs another name. */
export const LOT_METHOD = 'lots-1';

/** What is drawn for. */
export interface LotPlan {
  arrangement: TrialMetadata['design']['arrangement'];
  /** A whole number from 0 to 2^53 - 1. */
  seed: number;
  /** The containers' ids in the order of trial.yaml. */
  containers: readonly string[];
  /** In the order of trial.yaml, each with what it is allotted to. */
  factors: readonly (LotFactor & { unit: LotUnit })[];
}

/** The treatment drawn for each place, or why none can be. */
export type Drawn<T extends LotPlace> = { treatments: ReadonlyMap<T, Treatment> } | { reason: string };

/**
 * Draws the lots of a trial: for each group of units, the list of its treatments is shuffled and dealt to its units in
 * order. A group is a block (randomised blocks, split plots in blocks) or the whole trial; within a unit that holds
 * finer ones, these are the next groups. A Latin square is drawn as a whole.
 *
 * @param places what the treatments go to, in any order
 * @param had the treatments to be dealt anew, a place each, so that each group keeps its own; where it is not given
 *   each combination of levels is dealt equally often in every group
 */
export function drawLots<T extends LotPlace>(
  places: readonly T[],
  plan: LotPlan,
  had?: (place: T) => Treatment,
): Drawn<T> {
  const { arrangement, seed, factors } = plan;
  if (!Number.isSafeInteger(seed) || seed < 0)
    return {
      reason: say('the seed {seed} is no whole number from 0 to {most}', {
        seed,
        most: Number.MAX_SAFE_INTEGER,
      }),
    };
  if (places.length === 0 || factors.length === 0)
    return { reason: say('there is nothing to draw lots for') };
  const random = seededRandom(seed);
  const sorted = inOrderOfLots(places, plan.containers);
  if (arrangement === 'latin square') return drawSquares(sorted, factors, random);
  const used = lotUnits.filter((unit) => factors.some((factor) => factor.unit === unit));
  if (arrangement === 'split plot' && used.length < 2)
    return { reason: say('the main plots are not named, so that nobody can tell what was drawn for them') };
  const inBlocks = arrangement === 'randomised blocks' || arrangement === 'split plot';
  const treatments = new Map<T, Treatment>(sorted.map((place) => [place, {}]));
  let groups = inBlocks ? blocksOf(sorted) : [sorted];
  for (const unit of used) {
    const own = factors.filter((factor) => factor.unit === unit);
    const whole = unitsOf(sorted, unit).length;
    const units = groups.map((group) => unitsOf(group, unit));
    if (units.flat().length !== whole) return { reason: acrossGroups(unit) };
    for (const group of units) {
      const list = had
        ? sortedTreatments(
            group.map(([first]) => had(first!)),
            own,
          )
        : evenTreatments(group.length, own);
      if (list === null) return { reason: unevenly(group.length, unit, own) };
      deal(group, list, treatments, random);
    }
    groups = units.flat();
  }
  for (const [place, drawn] of treatments) treatments.set(place, inOrderOfFactors(drawn, factors));
  return { treatments };
}

/** Drawn coarse factors first, whatever their order in trial.yaml; told in the order of trial.yaml as everywhere. */
function inOrderOfFactors(drawn: Treatment, factors: readonly LotFactor[]): Treatment {
  return Object.fromEntries(factors.flatMap(({ id }) => (id in drawn ? [[id, drawn[id]!]] : [])));
}

function deal<T>(
  units: readonly (readonly T[])[],
  list: Treatment[],
  treatments: Map<T, Treatment>,
  random: SeededRandom,
): void {
  random.shuffle(list);
  units.forEach((unit, index) => {
    for (const place of unit) treatments.set(place, { ...treatments.get(place), ...list[index] });
  });
}

function acrossGroups(unit: LotUnit): string {
  if (unit === 'container') return say('a container lies in more than one block or main plot');
  return unit === 'plot'
    ? say('a plot lies in more than one block or main plot')
    : say('a position lies in more than one block or main plot');
}

function unevenly(count: number, unit: LotUnit, factors: readonly LotFactor[]): string {
  const treatments = factors.reduce((product, { levels }) => product * levels.length, 1);
  const units =
    unit === 'container'
      ? sayCount(count, '{count} container', '{count} containers')
      : unit === 'plot'
        ? sayCount(count, '{count} plot', '{count} plots')
        : sayCount(count, '{count} position', '{count} positions');
  return say('{treatments} treatments cannot be shared out evenly over {units}', { treatments, units });
}
