/** One weigh-in while its page is open. */
import { lastToUndo, type Entry, type KeptEntry } from '../../weigh/journal.ts';
import type { OpenedTrial } from '../../weigh/open-trial.ts';
import { weighState, type WeighState } from '../../weigh/weigh-state.ts';
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
  let journal: readonly KeptEntry[] = await store.journal(id);
  let state = weighState(opened, journal);
  let draft = (await store.draft(id)) ?? emptyDraft(state.cut);
  let writing: Promise<void> = Promise.resolve();
  const others = new BroadcastChannel(`tankside-weigh ${String(id)}`);
  others.onmessage = onOther;
  const after = (work: Promise<void>, isEntry: boolean): void => {
    writing = Promise.all([writing, work]).then(
      () => {
        if (isEntry) others.postMessage('entry');
      },
      (error: unknown) => onFault(String(error)),
    );
  };
  const enter = (entry: Entry, next: Draft): void => {
    const kept = { number: (journal.at(-1)?.number ?? 0) + 1, at: new Date().toISOString(), entry };
    journal = [...journal, kept];
    state = weighState(opened, journal);
    draft = next;
    after(store.keep(id, kept, next), true);
  };
  return {
    id,
    opened,
    journal: () => journal,
    state: () => state,
    draft: () => draft,
    enter,
    type: (next) => {
      draft = next;
      after(store.keepDraft(id, next), false);
    },
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
