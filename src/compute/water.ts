import type { Findings } from '../model/findings.ts';
import type { Container, Reading, Trial } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';
import { sum } from '../statistics/sum.ts';
import { squareMetres } from './growing-area.ts';
import type { Yields } from './yields.ts';

const method =
  'inside area x fall of the level + added + rain - overflow, from the first reading to the last';

/** A level is read to about this many cm on each occasion. Common practice, no source. */
const readingErrorCm = 0.2;

/**
 * Water used by each container that has readings, in litres, and for each kg of fresh weight over all cuts.
 * 1 cm of fall over 1 m2 is 10 L. The water of the first row was added after its level was read, so it counts;
 * that of the last row has not fallen yet in any reading, so it does not.
 */
export function waterUsed(trial: Trial, yields: Yields): Findings['water'] {
  const byContainer = Map.groupBy(trial.readings, ({ container }) => container);
  return trial.metadata.containers.flatMap((container) => {
    const readings = byContainer.get(container.id);
    return readings ? [waterOfContainer(container, readings, trial, yields)] : [];
  });
}

function waterOfContainer(
  container: Container,
  unsorted: readonly Reading[],
  trial: Trial,
  yields: Yields,
): Findings['water'][number] {
  const readings = [...unsorted].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : a.line - b.line,
  );
  const levels = readings.filter(({ level }) => level !== null);
  const nothing = (reason: string) => ({
    container: container.id,
    used_L: null,
    L_per_kg: null,
    method,
    reason,
  });
  if (!container.inside) return nothing('No inside measure of the container is given.');
  if (levels.length < 2) return nothing('Fewer than two levels were read.');
  const first = readings.indexOf(levels[0]!);
  const last = readings.indexOf(levels.at(-1)!);
  const litresPerCm = squareMetres(container.inside) * 10;
  const fall = levels[0]!.level! - levels.at(-1)!.level!;
  const between = readings.slice(first, last);
  const poured = sum(between.map(({ added }) => added ?? 0));
  const afterFirst = readings.slice(first + 1, last + 1);
  const rain = sum(afterFirst.map((reading) => reading.rain ?? 0));
  const overflow = sum(afterFirst.map((reading) => reading.overflow ?? 0));
  const used = litresPerCm * fall + poured + rain - overflow;
  const kilograms = kilogramsOf(container.id, trial, yields);
  return {
    container: container.id,
    used_L: used,
    L_per_kg: kilograms === null ? null : used / kilograms,
    uncertainty_L: litresPerCm * readingErrorCm * Math.SQRT2,
    method,
    reason: kilograms === null ? 'The weight of the whole container is not known.' : '',
  };
}

function kilogramsOf(container: string, trial: Trial, yields: Yields): number | null {
  const pots = yields.pots.filter(({ position }) => position.container === container);
  if (!isWeight(trial.metadata.variables[0]!.unit) || pots.some(({ pot }) => pot.unknown)) return null;
  const total = sum(pots.map(({ pot }) => pot.value ?? 0));
  return total > 0 ? total / 1000 : null;
}
