/** What the page keeps on the device, in the browser's own database: weigh-ins, their entries, what is being typed. */
import type { KeptEntry } from '../../weigh/journal.ts';
import type { OpenedTrial } from '../../weigh/open-trial.ts';
import type { Place } from '../../weigh/place.ts';

/** A weigh-in as it is kept. */
export interface KeptWeighing {
  /** Given by the database. */
  id: number;
  opened: OpenedTrial;
  /** True where the trial was opened from the site. */
  fromSite: boolean;
  /** ISO 8601. */
  begun: string;
}

/** What is being typed: kept at every key. */
export interface Draft {
  place: Place | null;
  cut: number;
  values: Readonly<Record<string, string>>;
  /** Index of the variable that the keys type. */
  field: number;
  remark: string;
}

/** What is being typed as it is kept. */
export interface KeptDraft extends Draft {
  /** Entries that had not reached the disk yet: they are written here too, which is faster. */
  ahead: readonly KeptEntry[];
}

export type Store = Awaited<ReturnType<typeof openStore>>;

const entryRange = (id: number): IDBKeyRange => IDBKeyRange.bound([id, 0], [id, Infinity]);

/** Opens the database of this site. Rejects where the browser keeps nothing, as some do in a private window. */
export async function openStore(site: string) {
  const request = indexedDB.open(`tankside-weigh ${site}`, 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore('weighings', { keyPath: 'id', autoIncrement: true });
    request.result.createObjectStore('entries', { keyPath: ['weighing', 'number'] });
    request.result.createObjectStore('drafts', { keyPath: 'weighing' });
  };
  const database = await answerOf(request);

  /**
   * A write that is done once it is on the disk (strict), or once the browser has it, which outlives the page but not
   * the battery (relaxed). It is committed at once: a page that dies now has handed it over already.
   */
  const write = (
    stores: string[],
    work: (transaction: IDBTransaction) => void,
    durability: IDBTransactionDurability = 'strict',
  ): Promise<void> =>
    new Promise((done, fail) => {
      const transaction = database.transaction(stores, 'readwrite', { durability });
      transaction.oncomplete = () => done();
      transaction.onabort = () => fail(transaction.error ?? new Error('nothing was written'));
      work(transaction);
      transaction.commit();
    });

  return {
    async weighings(): Promise<KeptWeighing[]> {
      return answerOf(database.transaction('weighings').objectStore('weighings').getAll());
    },
    async begin(weighing: Omit<KeptWeighing, 'id'>): Promise<KeptWeighing> {
      let id = 0;
      await write(['weighings'], (transaction) => {
        const added = transaction.objectStore('weighings').add(weighing);
        added.onsuccess = () => (id = added.result as number);
      });
      return { ...weighing, id };
    },
    async journal(id: number): Promise<KeptEntry[]> {
      return answerOf<KeptEntry[]>(
        database.transaction('entries').objectStore('entries').getAll(entryRange(id)),
      );
    },
    async draft(id: number): Promise<KeptDraft | undefined> {
      return answerOf<KeptDraft | undefined>(database.transaction('drafts').objectStore('drafts').get(id));
    },
    /** Keeps an entry. Rejects where its number is taken. */
    keep: (id: number, entry: KeptEntry): Promise<void> =>
      write(['entries'], (transaction) => {
        transaction.objectStore('entries').add({ ...entry, weighing: id });
      }),
    keepDraft: (id: number, draft: KeptDraft): Promise<void> =>
      write(
        ['drafts'],
        (transaction) => {
          transaction.objectStore('drafts').put({ ...draft, weighing: id });
        },
        'relaxed',
      ),
    forget: (id: number): Promise<void> =>
      write(['weighings', 'entries', 'drafts'], (transaction) => {
        transaction.objectStore('weighings').delete(id);
        transaction.objectStore('entries').delete(entryRange(id));
        transaction.objectStore('drafts').delete(id);
      }),
  };
}

function answerOf<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error ?? new Error('the database did not answer'));
  });
}
