/** One weigh-in while its page is open. */
import { lastToUndo, type Entry, type KeptEntry } from '../../weigh/journal.ts';
import type { OpenedTrial } from '../../weigh/open-trial.ts';
import { placeKey, type Place } from '../../weigh/place.ts';
import { recordAt, weighState, type WeighState } from '../../weigh/weigh-state.ts';
import type { Draft, KeptWeighing, Store } from './store.ts';

export interface Session {
  readonly id: number;
  readonly opened: OpenedTrial;
  journal(): readonly KeptEntry[];
  state(): WeighState;
  draft(): Draft;
  /** Takes an entry, and what is typed next; it is on its way to the disk when this returns. */
  enter(entry: Entry, draft: Draft): void;
  /** Keeps what is being typed. */
  type(draft: Draft): void;
  /** Takes the last entry back; null where there is none. */
  undo(): Entry | null;
  /** Resolves when all that was entered has reached the disk. */
  written(): Promise<void>;
  /** Hears no more of other windows. */
  close(): void;
}

/** Nothing typed. */
export const emptyDraft = (cut: number): Draft => ({ place: null, cut, values: {}, field: 0, remark: '' });

/**
 * Opens a weigh-in as it was kept.
 *
 * @param onFault is told why an entry could not be kept
 * @param onOther is called where the same weigh-in goes on in another window, so that the page reads it again
 */
export async function openSession(
  store: Store,
  { id, opened }: KeptWeighing,
  onFault: (reason: string) => void,
  onOther: () => void,
): Promise<Session> {
  const found = await store.journal(id);
  const typed = await store.draft(id);
  // Entries that had been handed over, and not written, when the page last ended.
  const behind = (typed?.ahead ?? []).filter(({ number }) => !found.some((each) => each.number === number));
  let journal: readonly KeptEntry[] = [...found, ...behind].sort((a, b) => a.number - b.number);
  let state = weighState(opened, journal);
  let draft: Draft = typed ?? emptyDraft(state.cut);
  let ahead: readonly KeptEntry[] = [];
  let writing: Promise<void> = Promise.resolve();
  const others = new BroadcastChannel(`tankside-weigh ${String(id)}`);
  others.onmessage = onOther;
  const after = (work: Promise<void>, onDone: () => void = () => undefined): void => {
    writing = Promise.all([writing, work.then(onDone, (error: unknown) => onFault(String(error)))]).then(
      () => undefined,
    );
  };
  const type = (next: Draft): void => {
    draft = next;
    after(store.keepDraft(id, { ...next, ahead }));
  };
  const keep = (kept: KeptEntry): void => {
    ahead = [...ahead, kept];
    after(store.keep(id, kept), () => {
      ahead = ahead.filter((each) => each !== kept);
      others.postMessage('entry');
    });
  };
  const enter = (entry: Entry, next: Draft): void => {
    const kept = { number: (journal.at(-1)?.number ?? 0) + 1, at: new Date().toISOString(), entry };
    journal = [...journal, kept];
    state = weighState(opened, journal);
    keep(kept);
    type(next);
  };
  for (const each of behind) keep(each);
  return {
    id,
    opened,
    journal: () => journal,
    state: () => state,
    draft: () => draft,
    enter,
    type,
    undo: () => {
      const last = lastToUndo(journal);
      if (last === null) return null;
      const { entry } = last;
      enter({ kind: 'undone', of: last.number }, draftAfterUndo(entry, draft));
      return entry;
    },
    written: () => writing,
    close: () => others.close(),
  };
}

/** What was taken back is typed again, to be changed or let go. */
function draftAfterUndo(entry: Entry, draft: Draft): Draft {
  if (entry.kind !== 'weighed') return draft;
  const { place, cut, values, remark } = entry;
  return { place, cut, values, field: 0, remark };
}

/** What is known of a place, to be changed. */
export function knownDraft(state: WeighState, place: Place): Draft {
  const record = recordAt(state, place);
  const remark = record?.remark ?? state.remarks.get(placeKey(place, state.cut)) ?? '';
  return { ...emptyDraft(state.cut), place, values: record?.values ?? {}, remark };
}
