import { valueColumn } from '../check/harvest-columns.ts';
import { repeatability, type Repeatability } from './repeatability.ts';
import { placeKey, type Place } from './place.ts';
import { recordAt, type WeighState } from './weigh-state.ts';
import { checkedMetadata, primaryOf } from './weigh-trial.ts';

/** How many are weighed twice: one in ten, and no fewer than this where there are as many. */
const fewest = 6;

/**
 * The places that are offered for a second weighing: as many as one in ten of those weighed, and at least six,
 * at even steps along the walk, so that light and heavy scales of the day are all among them.
 */
export function toWeighTwice(state: WeighState): Place[] {
  const weighed = state.places.filter((place) => recordAt(state, place)?.status === 'weighed');
  const count = Math.min(weighed.length, Math.max(fewest, Math.ceil(weighed.length / 10)));
  return Array.from({ length: count }, (_, index) => {
    return weighed[Math.floor(((index + 0.5) * weighed.length) / count)]!;
  });
}

/** The repeatability of the present cut's weighings in the unit of harvest.csv; null below two pairs. */
export function repeatabilityOf(state: WeighState): Repeatability | null {
  const { metadata } = state.trial;
  const variable = primaryOf(state.trial);
  const mark = metadata.harvest?.decimal ?? '.';
  const parse = (text: string): number | null =>
    valueColumn(checkedMetadata(metadata), variable, mark).parse(text) === null
      ? null
      : Number(text.replace(mark, '.'));
  const pairs = state.places.flatMap((place): [number, number][] => {
    const first = parse(recordAt(state, place)?.values[variable.id] ?? '');
    const second = parse(state.seconds.get(placeKey(place, state.cut)) ?? '');
    return first === null || second === null ? [] : [[first, second]];
  });
  return repeatability(pairs);
}
