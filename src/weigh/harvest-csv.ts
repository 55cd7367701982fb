import { harvestForm } from '../check/csv-form.ts';
import type { Place } from './place.ts';
import { placeKey } from './place.ts';
import { rowsText } from './rows-text.ts';
import { cutsBegun, endedBefore, recordAt, type PlaceRecord, type WeighState } from './weigh-state.ts';
import { checkedMetadata } from './weigh-trial.ts';

/**
 * harvest.csv of a weigh-in, with the headings, delimiter and decimal mark that trial.yaml declares: a row for
 * every place at each cut that was begun, in walking order. A place that was not entered has a row to be filled
 * in; a plant that ended at an earlier cut is said to have done so at the later ones.
 */
export function harvestCsv(state: WeighState): string {
  const { metadata } = state.trial;
  const cuts = cutsBegun(state);
  const rows = cuts.flatMap((cut) => rowsOfCut(state, cut));
  const has = (name: keyof Row): boolean => rows.some((row) => row[name] !== '');
  const names = [
    'container',
    'row',
    'column',
    ...(cuts.length > 1 || (metadata.dates?.cuts?.length ?? 1) > 1 || cuts[0] !== 1 ? ['cut'] : []),
    ...(has('date') ? ['date'] : []),
    ...(has('plant') ? ['plant'] : []),
    ...metadata.variables.map(({ id }) => id),
    'status',
    ...(has('pot_total') ? ['pot_total'] : []),
    'remark',
  ];
  const { headings, delimiter } = harvestForm(checkedMetadata(metadata));
  const lines = rows.map((row) => names.map((name) => row[name] ?? ''));
  return rowsText([names.map((name) => headings.get(name) ?? name), ...lines], delimiter);
}

type Row = Readonly<Record<string, string>>;

function rowsOfCut(state: WeighState, cut: number): Row[] {
  const known = new Set(state.places.map((place) => placeKey(place, cut)));
  const rows = state.places.map((place) => {
    const record = recordAt(state, place, cut);
    if (record !== null) return rowOf(record);
    const status = endedBefore(state, place, cut)?.status ?? '';
    return { ...openRow(place, cut), status, remark: state.remarks.get(placeKey(place, cut)) ?? '' };
  });
  // Rows of the folder that were entered by the plant where now pots are weighed whole, or the other way round.
  const others = [...state.records].filter(([key, record]) => record.cut === cut && !known.has(key));
  return [...rows, ...others.map(([, record]) => rowOf(record))];
}

function openRow({ container, row, column, plant }: Place, cut: number): Row {
  return {
    container,
    row: String(row),
    column: String(column),
    cut: String(cut),
    date: '',
    plant: plant === null ? '' : String(plant),
    status: '',
    pot_total: '',
    remark: '',
  };
}

function rowOf({ place, cut, date, status, values, potTotal, remark }: PlaceRecord): Row {
  const isNothing = Number(Object.values(values)[0]?.replace(',', '.') ?? '') === 0;
  return {
    ...openRow(place, cut),
    ...values,
    date,
    // A weight of nothing is said to be meant.
    status: status === 'weighed' && !isNothing ? '' : status,
    pot_total: potTotal,
    remark,
  };
}
