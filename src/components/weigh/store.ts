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

  /** A transaction that has reached the disk before it is called done. */
  const write = (stores: string[], work: (transaction: IDBTransaction) => void): Promise<void> =>
    new Promise((done, fail) => {
      const transaction = database.transaction(stores, 'readwrite', { durability: 'strict' });
      transaction.oncomplete = () => done();
      transaction.onabort = () => fail(transaction.error ?? new Error('nothing was written'));
      work(transaction);
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
    async draft(id: number): Promise<Draft | undefined> {
      return answerOf<Draft | undefined>(database.transaction('drafts').objectStore('drafts').get(id));
    },
    /** Keeps an entry and what is being typed after it, both or neither. Rejects where the number is taken. */
    keep: (id: number, entry: KeptEntry, draft: Draft): Promise<void> =>
      write(['entries', 'drafts'], (transaction) => {
        transaction.objectStore('entries').add({ ...entry, weighing: id });
        transaction.objectStore('drafts').put({ ...draft, weighing: id });
      }),
    keepDraft: (id: number, draft: Draft): Promise<void> =>
      write(['drafts'], (transaction) => {
        transaction.objectStore('drafts').put({ ...draft, weighing: id });
      }),
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
