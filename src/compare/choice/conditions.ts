import { formatNumber } from '../../compute/format/format-number.ts';
import { say } from '../../model/say.ts';
import type { TrialCells } from '../season-cells.ts';

type SeasonTrial = TrialCells['trial'];

export type ConditionKey =
  'plants' | 'cuts' | 'weighed' | 'strength' | 'spacing' | 'days' | 'averaged' | 'site';

/** Something that may differ between trials and can be held fixed. */
export interface Condition {
  key: ConditionKey;
  label: string;
  /** What a trial had, as a reader chooses it. Numbers that are measured come in bands. */
  of: (trial: SeasonTrial) => string;
}

const notKnown = 'not known';

/**
 * The band that a number lies in, its upper end left out; a bound is written as short as its step allows.
 *
 * @example band(1.24, 0.5) // "1.0 to 1.5"
 */
export function band(value: number | null, step: number): string {
  if (value === null) return notKnown;
  // A number on a bound must not fall below it by the rounding of its division.
  const low = Math.floor(value / step + 1e-9) * step;
  const digits = Number.isInteger(step) ? 0 : 1;
  return `${formatNumber(low, digits)} to ${formatNumber(low + step, digits)}`;
}

/** What a trial had, in the words of the page; in an address it stands as it is. */
export function conditionWords(value: string): string {
  const [, low, high] = /^(\S+) to (\S+)$/.exec(value) ?? [];
  return low === undefined || high === undefined
    ? say(value)
    : say('{from} to {to}', { from: low, to: high });
}

/** How wide bands are: common practice, no source. */
const bands = { strength: 0.5, spacing: 5, days: 10 } as const;

/** All that can be held fixed beside the season and the setting. */
export const conditions: readonly Condition[] = [
  { key: 'plants', label: 'Plants a pot', of: (trial) => trial.plants_per_pot },
  { key: 'cuts', label: 'Cuts', of: ({ cuts }) => String(cuts) },
  { key: 'weighed', label: 'Weighed', of: ({ variable }) => variable.toLowerCase() },
  { key: 'strength', label: 'Strength, mS/cm', of: ({ ec }) => band(ec, bands.strength) },
  { key: 'spacing', label: 'Pots a m²', of: ({ pots_per_m2: pots }) => band(pots, bands.spacing) },
  { key: 'days', label: 'Days', of: ({ days }) => band(days, bands.days) },
  { key: 'averaged', label: 'Averaged over', of: ({ averaged_over: over }) => over || 'nothing else' },
  { key: 'site', label: 'Site', of: ({ origin }) => origin?.title ?? 'this site' },
];

/** The time of the year and the year of a trial's season. */
export function seasonParts({ season }: Pick<SeasonTrial, 'season'>): { time: string; year: number | null } {
  const found = /^(.*?)\s*\b(\d{4})\b/.exec(season);
  return found ? { time: found[1]!, year: Number(found[2]) } : { time: season, year: null };
}
