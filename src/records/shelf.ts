/**
 * Where events lie: the one thing that the store asks of a storage. What was stored may have been
 * damaged since, so an event comes back as unknown and is checked by whoever reads it.
 */
export interface StoredRow {
  readonly id: string;
  readonly case: string;
  readonly event: unknown;
}

export interface Shelf {
  /** Every row of every case, in no order. */
  all(): Promise<readonly StoredRow[]>;
  rows(caseId: string): Promise<readonly StoredRow[]>;
  /**
   * Adds rows in one transaction: all of them or none, and durable once resolved.
   *
   * @param make  sees the rows of the case inside the transaction and returns those to add
   * @throws when a row's id is taken, or the storage refuses
   */
  add(caseId: string, make: (present: readonly StoredRow[]) => readonly StoredRow[]): Promise<void>;
  remove(caseId: string): Promise<void>;
  /** A setting of this device, made when first asked for. */
  setting(name: string, make: () => string): Promise<string>;
  close(): void;
}

/** A shelf that is gone with the page: where the browser refuses to store, and in tests. */
export function memoryShelf(): Shelf {
  const kept = new Map<string, StoredRow>();
  const settings = new Map<string, string>();
  const rows = (caseId: string) => [...kept.values()].filter((row) => row.case === caseId);
  return {
    all: async () => [...kept.values()],
    rows: async (caseId) => rows(caseId),
    add: async (caseId, make) => {
      const added = make(rows(caseId));
      const taken = added.find(({ id }) => kept.has(id));
      if (taken !== undefined)
        throw new Error(`records: event ${taken.id} is stored already; give it a new sequence`);
      for (const row of added) kept.set(row.id, structuredClone(row));
    },
    remove: async (caseId) => {
      for (const { id } of rows(caseId)) kept.delete(id);
    },
    setting: async (name, make) => {
      const value = settings.get(name) ?? make();
      settings.set(name, value);
      return value;
    },
    close: () => {},
  };
}
