import { say } from '../../model/say.ts';
import type { Findings } from '../../model/findings.ts';
import type { Container, Reading, Trial } from '../../model/trial.ts';
import { isWeight, litresIn } from '../../model/units.ts';
import { sum } from '../../statistics/sum.ts';
import { daysBetween } from '../days-between.ts';
import { distinct } from '../tables/page-table.ts';
import type { Yields } from '../yields.ts';
import { fillLasts } from './fill-lasts.ts';
import { inOrder, levelFall, litresInCentimetre } from './level-fall.ts';

export type WaterOfContainer = Findings['water'][number];

const method =
  'inside area x fall of the level + added + rain - overflow, from the first reading to the last';

/** A level is read to about this many cm on each occasion. Common practice, no source. */
const readingErrorCm = 0.2;

/**
 * Water used by each container that has readings, in litres: in all, for each kg of fresh weight over all cuts, and
 * for each plant set and day; what is left, and whether the first fill would have lasted to the last cut. The water
 * of the first row was added after its level was read, so it counts; that of the last row has not fallen yet in any
 * reading, so it does not. A container's water is never split between treatments that drew on it together.
 *
 * @param yields over all cuts; null while nothing is cut
 */
export function waterUsed(trial: Trial, yields: Yields | null): Findings['water'] {
  const byContainer = Map.groupBy(trial.readings, ({ container }) => container);
  return trial.metadata.containers.flatMap((container) => {
    const readings = byContainer.get(container.id);
    return readings ? [waterOfContainer(container, inOrder(readings), trial, yields)] : [];
  });
}

function waterOfContainer(
  container: Container,
  readings: readonly Reading[],
  trial: Trial,
  yields: Yields | null,
): WaterOfContainer {
  const nothing = (reason: string): WaterOfContainer => ({
    container: container.id,
    used_L: null,
    L_per_kg: null,
    method,
    reason,
  });
  const litres = litresInCentimetre(container);
  if (litres === null) return nothing(say('No inside measure of the container is given.'));
  const whole = levelFall(readings, litres);
  if (whole === null) return nothing(say('Fewer than two levels were read.'));
  const uncertainty = litres * readingErrorCm * Math.SQRT2;
  const kilograms = yields === null ? null : kilogramsOf(container.id, trial, yields);
  const plants = sum(
    trial.positions.filter((position) => position.container === container.id).map((each) => each.plants),
  );
  const days = daysBetween(whole.first, whole.last);
  const { volume } = container;
  const rest = fillLasts(whole, readings, litres, {
    volume: volume ? volume.value * litresIn[volume.unit]! : null,
    harvest: lastCutOf(container.id, trial),
    uncertainty,
  });
  const reasons = [
    yields !== null && kilograms === null ? say('The weight of the whole container is not known.') : '',
    days > 0 ? '' : say('All levels were read on one day.'),
    rest.reason,
  ];
  return {
    container: container.id,
    used_L: whole.used,
    L_per_kg: kilograms === null ? null : whole.used / kilograms,
    uncertainty_L: uncertainty,
    days,
    plants,
    L_per_plant_day: days > 0 && plants > 0 ? whole.used / (plants * days) : null,
    left_L: rest.left_L,
    fill_lasts: rest.fill_lasts,
    method,
    reason: distinct(reasons).join(' '),
  };
}

/** The day of a container's last cut: of its own rows in the harvest, or else the last that the trial plans. */
function lastCutOf(container: string, { harvest, metadata }: Trial): string | null {
  const cuts = metadata.dates?.cuts ?? [];
  const own = harvest
    .filter((record) => record.container === container)
    .map(({ date, cut }) => date ?? cuts[cut - 1] ?? null)
    .filter((date) => date !== null);
  return (own.length > 0 ? own : cuts).toSorted().at(-1) ?? null;
}

function kilogramsOf(container: string, trial: Trial, yields: Yields): number | null {
  const pots = yields.pots.filter(({ position }) => position.container === container);
  if (!isWeight(trial.metadata.variables[0]!.unit) || pots.some(({ pot }) => pot.unknown)) return null;
  const total = sum(pots.map(({ pot }) => pot.value ?? 0));
  return total > 0 ? total / 1000 : null;
}
