import type { Status } from '../model/trial.ts';
import type { EventEntry, KeptEntry, ReadingEntry } from './journal.ts';
import { standing } from './journal.ts';
import { placeKey, placesOf, type Place, type Walk } from './place.ts';
import type { WeighTrial } from '../model/weigh-trial.ts';
import { primaryOf } from './weigh-trial.ts';

/** What is known of a place at a cut. */
export interface PlaceRecord {
  place: Place;
  cut: number;
  /** Year-month-day; empty where the folder's row gives none. */
  date: string;
  status: Status;
  /** By the variable's id: the digits, in the unit of harvest.csv. */
  values: Readonly<Record<string, string>>;
  /** The pot's total as the folder's row gives it; empty elsewhere. */
  potTotal: string;
  remark: string;
  kept: readonly string[];
}

/** A weigh-in as it stands. */
export interface WeighState {
  trial: WeighTrial;
  walk: Walk;
  /** Every place of the trial in walking order. */
  places: readonly Place[];
  cut: number;
  /** The day that is being entered for, year-month-day. */
  date: string;
  /** By `placeKey`. */
  records: ReadonlyMap<string, PlaceRecord>;
  /** Remarks of places that may still be open, by `placeKey`. */
  remarks: ReadonlyMap<string, string>;
  /** Second weighings by `placeKey`. */
  seconds: ReadonlyMap<string, string>;
  /** Independent totals by cut and container: `1|T2`. */
  totals: ReadonlyMap<string, string>;
  readings: readonly ReadingEntry[];
  events: readonly EventEntry[];
}

/** A remark that stands beside a place which is still to be weighed. */
export interface OpenRemark {
  place: Place;
  cut: number;
  remark: string;
}

/** What a weigh-in begins with. */
export interface WeighStart {
  trial: WeighTrial;
  /** The rows that harvest.csv of the folder holds already. */
  given: readonly PlaceRecord[];
  remarks: readonly OpenRemark[];
}

/** Over: nothing more comes of such a plant at a later cut. */
const over: ReadonlySet<Status> = new Set(['dead', 'culled', 'not planted']);

/** The state that a journal leads to. */
export function weighState(
  { trial, given, remarks: noted }: WeighStart,
  journal: readonly KeptEntry[],
): WeighState {
  const records = new Map(given.map((record) => [placeKey(record.place, record.cut), record]));
  const remarks = new Map(noted.map(({ place, cut, remark }) => [placeKey(place, cut), remark]));
  const seconds = new Map<string, string>();
  const totals = new Map<string, string>();
  const readings: ReadingEntry[] = [];
  const events: EventEntry[] = [];
  let walk: Walk = { boustrophedon: false, whole: isWhole(trial, given) };
  let { cut, date } = firstCut(trial, given);
  for (const { entry } of standing(journal)) {
    if (entry.kind === 'weighed')
      records.set(placeKey(entry.place, entry.cut), {
        ...entry,
        potTotal: records.get(placeKey(entry.place, entry.cut))?.potTotal ?? '',
      });
    else if (entry.kind === 'left')
      for (const place of entry.places) {
        const key = placeKey(place, entry.cut);
        if (!records.has(key)) records.set(key, notWeighed(place, entry.cut, entry.date));
      }
    else if (entry.kind === 'second') seconds.set(placeKey(entry.place, entry.cut), entry.value);
    else if (entry.kind === 'total') totals.set(totalKey(entry.container, entry.cut), entry.value);
    else if (entry.kind === 'reading') readings.push(entry);
    else if (entry.kind === 'event') events.push(entry);
    else if (entry.kind === 'cut') ({ cut, date } = entry);
    else if (entry.kind === 'walk') walk = entry;
  }
  const places = placesOf(trial, walk);
  return { trial, walk, places, cut, date, records, remarks, seconds, totals, readings, events };
}

export function totalKey(container: string, cut: number): string {
  return `${String(cut)}|${container}`;
}

function notWeighed(place: Place, cut: number, date: string): PlaceRecord {
  return { place, cut, date, status: 'not weighed', values: {}, potTotal: '', remark: '', kept: [] };
}

/** Pots are weighed whole where the folder's rows say so already. */
function isWhole(trial: WeighTrial, given: readonly PlaceRecord[]): boolean {
  return primaryOf(trial).of === 'pot' || given.some(({ place }) => place.plant === null);
}

/** The first cut that is not entered whole, with its day where trial.yaml knows it. */
function firstCut(trial: WeighTrial, given: readonly PlaceRecord[]): { cut: number; date: string } {
  const cuts = trial.metadata.dates?.cuts ?? [];
  const places = placesOf(trial, { boustrophedon: false, whole: isWhole(trial, given) });
  const entered = new Set(given.map(({ place, cut }) => placeKey(place, cut)));
  let cut = 1;
  while (
    given.some((record) => record.cut === cut) &&
    places.every((place) => entered.has(placeKey(place, cut)))
  )
    cut += 1;
  return { cut, date: cuts[cut - 1] ?? '' };
}

/** The record of a place at a cut; null where nothing was entered. */
export function recordAt(state: WeighState, place: Place, cut = state.cut): PlaceRecord | null {
  return state.records.get(placeKey(place, cut)) ?? null;
}

/** The record of an earlier cut after which nothing more comes of a place; null where there is none. */
export function endedBefore(state: WeighState, place: Place, cut = state.cut): PlaceRecord | null {
  for (let earlier = 1; earlier < cut; earlier += 1) {
    const record = recordAt(state, place, earlier);
    if (record !== null && over.has(record.status)) return record;
  }
  return null;
}

/** True where a place needs nothing more at a cut. */
export function isDone(state: WeighState, place: Place, cut = state.cut): boolean {
  return recordAt(state, place, cut) !== null || endedBefore(state, place, cut) !== null;
}

/** The places without an entry at a cut. */
export function openPlaces(state: WeighState, cut = state.cut): Place[] {
  return state.places.filter((place) => !isDone(state, place, cut));
}

/** The first place without an entry after the given one, in walking order and from the start again; null where all are done. */
export function nextOpen(state: WeighState, after: Place | null): Place | null {
  const key = after === null ? '' : placeKey(after, state.cut);
  const from = state.places.findIndex((place) => placeKey(place, state.cut) === key) + 1;
  const inTurn = [...state.places.slice(from), ...state.places.slice(0, from)];
  return inTurn.find((place) => !isDone(state, place)) ?? null;
}

/** The cuts that anything was entered for, or that trial.yaml or the person named, in order. */
export function cutsBegun({ records, cut }: WeighState): number[] {
  const cuts = new Set([...records.values()].map((record) => record.cut));
  return [...cuts.add(cut)].sort((a, b) => a - b);
}
