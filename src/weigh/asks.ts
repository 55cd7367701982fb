import { valueColumn } from '../check/harvest-columns.ts';
import { isBetweenSteps, stepOf } from '../check/rules/off-the-scale.ts';
import { rangeFault } from '../check/rules/outside-the-range.ts';
import { unitSlip } from '../check/rules/unit-mixed-up.ts';
import { fellowsName, usualOf } from '../check/weighings.ts';
import type { Position, Variable } from '../model/trial.ts';
import { gramsIn, isWeight } from '../model/units.ts';
import { usualRange } from './far-from-fellows.ts';
import type { Place } from './place.ts';
import { placeKey } from './place.ts';
import type { WeighState } from './weigh-state.ts';
import { checkedMetadata } from './weigh-trial.ts';

/** Something to be asked about a value, once; numbers are in the unit of harvest.csv. */
export type Ask =
  | { about: 'unit'; factor: number; relation: 'more' | 'less'; usual: number; question: string }
  | { about: 'fellows'; usual: number; lower: number; upper: number; n: number }
  | { about: 'range'; side: 'below' | 'above'; limit: number }
  | { about: 'step'; step: number }
  | { about: 'zero' };

/** What is to be asked about one value of a place that was just typed; none where nothing surprises. */
export function asksOf(state: WeighState, place: Place, variable: Variable, text: string): Ask[] {
  const metadata = checkedMetadata(state.trial.metadata);
  const column = valueColumn(metadata, variable, state.trial.metadata.harvest?.decimal ?? '.');
  const value = column.parse(text);
  if (value === null) return [];
  const isPrimary = variable === state.trial.metadata.variables[0];
  if (value === 0 && isPrimary && column.isWeight) return [{ about: 'zero' }];
  const inOne = (grams: number): number => (column.isWeight ? grams / fileGrams(state, variable) : grams);
  const asks: Ask[] = [];
  const fellows = isPrimary && column.isWeight ? fellowsOf(state, place, variable, column.parse) : [];
  const usual = usualOf(fellows);
  const slip = unitSlip(value, usual);
  const range = usualRange(fellows);
  if (slip !== null) asks.push({ about: 'unit', ...slip, usual: inOne(usual) });
  else if (range !== null && (value < range.lower || value > range.upper))
    asks.push({
      about: 'fellows',
      usual: inOne(range.median),
      lower: inOne(range.lower),
      upper: inOne(range.upper),
      n: range.n,
    });
  const side = rangeFault(value, variable);
  const limit = side === 'below' ? variable.lowest : variable.highest;
  if (side !== null && limit !== undefined && slip === null) asks.push({ about: 'range', side, limit });
  const step = stepOf(metadata, variable);
  if (step !== null && isBetweenSteps(value, step)) asks.push({ about: 'step', step: inOne(step) });
  return asks;
}

/** g in one unit of the file's column. */
function fileGrams({ trial }: WeighState, variable: Variable): number {
  const unit = trial.metadata.harvest?.columns?.[variable.id]?.unit ?? variable.unit ?? '';
  return isWeight(unit) ? (gramsIn[unit] ?? 1) : 1;
}

/** The weights of the place's fellows at this cut so far, in g: the same treatment, weighed in the same way. */
function fellowsOf(
  state: WeighState,
  place: Place,
  { id }: Variable,
  parse: (text: string) => number | null,
): number[] {
  const nameOf = new Map(state.trial.positions.map((each) => [spotOf(each), each]));
  const groupOf = (at: Place): string | null => {
    const position = nameOf.get(spotOf(at));
    return position === undefined ? null : fellowsName(position, at.plant);
  };
  const own = placeKey(place, state.cut);
  const group = groupOf(place);
  return [...state.records].flatMap(([key, record]) => {
    const isFellow =
      record.cut === state.cut &&
      key !== own &&
      record.status === 'weighed' &&
      groupOf(record.place) === group;
    const weight = isFellow ? parse(record.values[id] ?? '') : null;
    return weight === null || weight <= 0 ? [] : [weight];
  });
}

const spotOf = ({ container, row, column }: Pick<Position, 'container' | 'row' | 'column'>): string =>
  [container, row, column].join('|');
