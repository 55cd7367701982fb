import { valueColumn } from '../check/harvest-columns.ts';
import { isBeyondRounding, mostByRounding, stepInGrams } from '../check/totals.ts';
import { gramsIn, isWeight } from '../model/units.ts';
import { endedBefore, recordAt, totalKey, type WeighState } from './weigh-state.ts';
import { checkedMetadata, primaryOf } from './weigh-trial.ts';

/** The sum of a container's weights at a cut beside its independent total; in the unit of harvest.csv. */
export interface ContainerTotal {
  container: string;
  /** Places of the container, and those of them with an entry. */
  places: number;
  entered: number;
  /** How many were weighed, and their sum. */
  n: number;
  sum: number;
  /** How many were there and not weighed: the sum then lacks them. */
  notWeighed: number;
  /** As it was typed; empty where it was not. */
  total: string;
  /** Total less sum; null without a total. */
  difference: number | null;
  /** The most that rounding explains: (n + 1) × step / 2. */
  byRounding: number;
  verdict: 'no total' | 'not complete' | 'agrees' | 'differs';
}

/** The containers of a trial at the present cut; none where the primary variable is no weight. */
export function containerTotals(state: WeighState): ContainerTotal[] {
  return state.trial.metadata.containers.flatMap(({ id }) => totalOf(state, id) ?? []);
}

function totalOf(state: WeighState, container: string): ContainerTotal | null {
  const { metadata } = state.trial;
  const variable = primaryOf(state.trial);
  const { parse, isWeight: isGrams } = valueColumn(
    checkedMetadata(metadata),
    variable,
    metadata.harvest?.decimal ?? '.',
  );
  if (!isGrams) return null;
  const unit = metadata.harvest?.columns?.[variable.id]?.unit ?? variable.unit ?? 'g';
  const grams = isWeight(unit) ? (gramsIn[unit] ?? 1) : 1;
  const places = state.places.filter((place) => place.container === container);
  const records = places.map((place) => recordAt(state, place) ?? endedBefore(state, place));
  const weights = records.flatMap((record) => {
    const value = record?.status === 'weighed' ? parse(record.values[variable.id] ?? '') : null;
    return value === null ? [] : [value];
  });
  const parts = { n: weights.length, sum: weights.reduce((sum, weight) => sum + weight, 0) };
  const entered = records.filter((record) => record !== null).length;
  const notWeighed = records.filter((record) => record?.status === 'not weighed').length;
  const total = state.totals.get(totalKey(container, state.cut)) ?? '';
  const weighed = total === '' ? null : parse(total);
  const step = stepInGrams(variable, weighed === null ? 0 : weighed / grams, unit);
  return {
    container,
    places: places.length,
    entered,
    n: parts.n,
    sum: rounded(parts.sum / grams),
    notWeighed,
    total,
    difference: weighed === null ? null : rounded((weighed - parts.sum) / grams),
    byRounding: rounded(mostByRounding(parts.n, step) / grams),
    verdict: verdictOf(),
  };

  function verdictOf(): ContainerTotal['verdict'] {
    if (weighed === null) return 'no total';
    if (entered < places.length || notWeighed > 0) return 'not complete';
    return isBeyondRounding(weighed, parts, step) ? 'differs' : 'agrees';
  }
}

/** Without the hair of binary arithmetic. */
const rounded = (value: number): number => Number(value.toPrecision(12));
