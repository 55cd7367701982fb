import { unitInFile } from '../check/harvest-columns.ts';
import type { TrialMetadata } from '../model/trial.ts';
import { isWeight } from '../model/units.ts';
import { editRelease, type NewRelease } from '../read/edit-release.ts';
import { addToYaml, inFlow, setInYaml } from '../read/edit-yaml.ts';
import type { EventEntry } from './journal.ts';
import { cutsBegun, totalKey, type WeighState } from './weigh-state.ts';
import { checkedMetadata, primaryOf } from './weigh-trial.ts';

/** What a weigh-in has to say in trial.yaml. */
export interface TrialEdits {
  /** The day of every cut, where trial.yaml does not say them all already; else null. */
  cuts: readonly string[] | null;
  /** `weighed_total` of each container whose every cut was weighed apart. */
  totals: readonly { container: string; value: number; unit: string }[];
  events: readonly EventEntry[];
  /** True where the trial is not finished yet and could be called so. */
  finish: boolean;
  /** The first release of the finished trial, which may have been released as a plan; null where it has one. */
  release: NewRelease | null;
}

/** Everything that trial.yaml could be told; what the person does not agree to is taken out of it. */
export function trialEdits(state: WeighState, today: string): TrialEdits {
  const { metadata } = state.trial;
  const isFinished = metadata.status === 'finished';
  return {
    cuts: cutDates(state),
    totals: weighedTotals(state),
    events: state.events,
    finish: !isFinished,
    release: firstRelease(metadata, today),
  };
}

/** Version 1.0.0, or the next after the plan's where that had reached it. */
function firstRelease({ status, ...metadata }: TrialMetadata, today: string): NewRelease | null {
  const releases: readonly { version: string }[] = metadata.releases ?? [];
  if (status === 'finished' && releases.length > 0) return null;
  const planned = releases.map(({ version }) => Number(version.split('.')[0]));
  return { version: `${String(Math.max(0, ...planned) + 1)}.0.0`, date: today, note: 'First release.' };
}

/** No edit at all. */
export const noEdits: TrialEdits = { cuts: null, totals: [], events: [], finish: false, release: null };

function cutDates(state: WeighState): string[] | null {
  const known: readonly string[] = state.trial.metadata.dates?.cuts ?? [];
  const begun = cutsBegun(state);
  const last = Math.max(known.length, ...begun);
  const days = Array.from({ length: last }, (_, index) => {
    const cut = index + 1;
    const entered = [...state.records.values()].find((record) => record.cut === cut && record.date !== '');
    return entered?.date ?? known[index] ?? (cut === state.cut ? state.date : '');
  });
  return days.includes('') || days.join() === known.join() ? null : days;
}

function weighedTotals(state: WeighState): TrialEdits['totals'] {
  const { metadata } = state.trial;
  const unit = unitInFile(checkedMetadata(metadata), primaryOf(state.trial));
  if (!isWeight(unit)) return [];
  const cuts = cutsBegun(state);
  return metadata.containers.flatMap(({ id }) => {
    const texts = cuts.map((cut) => state.totals.get(totalKey(id, cut)) ?? '');
    if (texts.includes('')) return [];
    const sum = texts.reduce((total, text) => total + Number(text.replace(',', '.')), 0);
    return [{ container: id, value: Number(sum.toPrecision(12)), unit }];
  });
}

/** The text of trial.yaml with the edits in their places, and everything else as it was. */
export function editedTrial(source: string, metadata: TrialMetadata, edits: TrialEdits): string {
  let text = source;
  if (edits.finish) text = setInYaml(text, ['status'], 'finished');
  if (edits.cuts !== null) text = setInYaml(text, ['dates', 'cuts'], edits.cuts);
  for (const { container, value, unit } of edits.totals) {
    const index = metadata.containers.findIndex(({ id }) => id === container);
    if (index >= 0) text = setInYaml(text, ['containers', index, 'weighed_total'], { value, unit });
  }
  for (const event of edits.events) text = addToYaml(text, ['events'], eventOf(event));
  return edits.finish && edits.release !== null ? editRelease(text, edits.release) : text;
}

function eventOf({ date, where, what }: EventEntry): Record<string, string> {
  return { date, ...(where === '' ? {} : { where }), what };
}

/** The same edits as lines to be written into trial.yaml by hand. */
export function editLines(edits: TrialEdits): string[] {
  const { cuts, totals, events, finish, release } = edits;
  return [
    ...(finish ? ['status: finished'] : []),
    ...(cuts === null ? [] : [`dates: {cuts: ${inFlow(cuts)}}`]),
    ...(totals.length === 0 ? [] : ['containers:']),
    ...totals.map(
      ({ container, ...total }) => `  - {id: ${inFlow(container)}, weighed_total: ${inFlow(total)}}`,
    ),
    ...(events.length === 0 ? [] : ['events:']),
    ...events.map((event) => `  - ${inFlow(eventOf(event))}`),
    ...(finish && release !== null ? ['releases:', `  - ${inFlow({ ...release })}`] : []),
  ];
}
