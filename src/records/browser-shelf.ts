import { Dexie, type Table } from 'dexie';
import type { Shelf, StoredRow } from './shelf.ts';

/** The pieces of IndexedDB; tests hand in their own. */
export interface Database {
  readonly indexedDB: IDBFactory;
  readonly IDBKeyRange: typeof IDBKeyRange;
}

/**
 * A shelf in the browser's own database. Writes wait until they are on the disk, not only handed
 * over: a phone may lose its battery between two readings.
 *
 * @throws (rejects) when the browser refuses to store
 */
export async function browserShelf(name: string, database: Database): Promise<Shelf> {
  const shelf = new Dexie(name, { ...database, chromeTransactionDurability: 'strict' });
  shelf.version(1).stores({ events: 'id, case', settings: 'name' });
  const events: Table<StoredRow, string> = shelf.table('events');
  const settings: Table<{ name: string; value: string }, string> = shelf.table('settings');
  await shelf.open();
  const rows = (caseId: string) => events.where('case').equals(caseId).toArray();
  return {
    all: () => reopened(shelf, () => events.toArray()),
    rows: (caseId) => reopened(shelf, () => rows(caseId)),
    add: (caseId, make) =>
      reopened(shelf, () =>
        shelf.transaction('rw', events, async () => {
          await events.bulkAdd(make(await rows(caseId)));
        }),
      ),
    remove: (caseId) =>
      reopened(shelf, async () => {
        await events.where('case').equals(caseId).delete();
      }),
    setting: (key, make) =>
      shelf.transaction('rw', settings, async () => {
        const known = await settings.get(key);
        if (known !== undefined) return known.value;
        const value = make();
        await settings.add({ name: key, value });
        return value;
      }),
    close: () => shelf.close(),
  };
}

/** A phone may cut the connection while the page sleeps: open it once more, then give up. */
async function reopened<T>(shelf: Dexie, work: () => PromiseLike<T>): Promise<T> {
  if (!shelf.isOpen()) await shelf.open();
  return work();
}
