import { type Ask, asksOf } from './asks.ts';
import type { Place } from './place.ts';
import { recordAt, type WeighState } from './weigh-state.ts';

/** The first value of a place that surprises. */
export interface Surprise {
  /** Of its variable. */
  index: number;
  /** Variable and value, by which it is asked once. */
  key: string;
  text: string;
  asks: readonly Ask[];
}

/**
 * The first value of a place that surprises and was neither asked about nor kept before; null where none does.
 *
 * @param values by variable, as typed
 * @param asked the keys of what was asked about already
 */
export function firstSurprise(
  state: WeighState,
  place: Place,
  values: Readonly<Record<string, string>>,
  asked: ReadonlySet<string>,
): Surprise | null {
  const known = recordAt(state, place)?.kept ?? [];
  for (const [index, variable] of state.trial.metadata.variables.entries()) {
    const text = values[variable.id] ?? '';
    const key = `${variable.id} ${text}`;
    if (text === '' || asked.has(key) || known.includes(key)) continue;
    const asks = asksOf(state, place, variable, text);
    if (asks.length > 0) return { index, key, text, asks };
  }
  return null;
}
