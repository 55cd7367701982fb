import { say } from '../../model/say.ts';
import type { Reading } from '../../model/trial.ts';
import { daysBetween } from '../days-between.ts';
import { type LevelFall, levelFall } from './level-fall.ts';

/** What is left of a container's solution, and whether its first fill would have been enough. */
export interface Remainder {
  /** L in the container after its last reading; null where its volume is not given or does not fit the fall. */
  left_L: number | null;
  /** True where the first fill and the rain alone would have lasted to the last cut; null where it cannot be told. */
  fill_lasts: boolean | null;
  reason: string;
}

/**
 * Reckons from the volume that the container held at its first reading. Where the last reading was before the last
 * cut, the days between are taken to need as much a day as the last two readings showed; where the result is within
 * the uncertainty of the readings, it cannot be told.
 *
 * @param volume L at the first reading
 * @param harvest the day of the container's last cut, ISO 8601; null where none is set
 * @param uncertainty L, of the water used
 */
export function fillLasts(
  whole: LevelFall,
  readings: readonly Reading[],
  litres: number,
  { volume, harvest, uncertainty }: { volume: number | null; harvest: string | null; uncertainty: number },
): Remainder {
  if (volume === null)
    return { left_L: null, fill_lasts: null, reason: say('The volume of the container is not given.') };
  const left = volume - whole.fallen + whole.addedSince;
  if (left < 0) {
    const reason = say('The level fell by more than the volume that is given for the container.');
    return { left_L: null, fill_lasts: null, reason };
  }
  const untold = (reason: string): Remainder => ({ left_L: left, fill_lasts: null, reason });
  if (harvest === null) return untold(say('No day of a cut is known to reckon the water to.'));
  const open = Math.max(0, daysBetween(whole.last, harvest));
  const latest = levelFall(readings, litres, 2);
  const days = latest ? daysBetween(latest.first, latest.last) : 0;
  if (open > 0 && (!latest || days <= 0)) return untold(say('The last two levels were read on one day.'));
  const stillNeeded = open > 0 ? (open * Math.max(0, latest!.used)) / days : 0;
  const over = volume - whole.used + whole.rain - whole.overflow - stillNeeded;
  if (Math.abs(over) <= uncertainty)
    return untold(say('Whether the first fill would have lasted is within the uncertainty of the readings.'));
  return { left_L: left, fill_lasts: over > 0, reason: '' };
}
