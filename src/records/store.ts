import { browserShelf, type Database } from './browser-shelf.ts';
import { foldCase } from './fold.ts';
import { lapseDue } from './lapse.ts';
import { type Conflict, mergeEvents } from './merge.ts';
import type { EventDraft, RecordedCase, RecordedEvent } from './recorded.ts';
import { memoryShelf, type Shelf } from './shelf.ts';
import { numberDrafts, readRows, rowOf, type StoredCase } from './stored-case.ts';
import { type CaseSummary, summaries } from './summary.ts';
import { type Locks, type Writers, writers } from './writer.ts';

/** What came of taking a case in. */
export interface TakenIn {
  readonly added: number;
  /** Same id, other content: ours was kept. */
  readonly conflicts: readonly Conflict[];
}

/**
 * The kept cases. Every tap is one transaction that is durable before `append` resolves; nothing
 * stored is ever changed; a case can be deleted for good.
 */
export interface CaseStore {
  /** True where storage is refused: all is gone with the page, and must be exported before. */
  readonly volatile: boolean;
  /** Why it is volatile, in the browser's words. */
  readonly refusal: string | undefined;
  readonly device: string;
  list(): Promise<readonly CaseSummary[]>;
  /** No events for a case that is not there. */
  read(caseId: string): Promise<StoredCase>;
  /** True when this page may write to the case; false while another page does. */
  hold(caseId: string): Promise<boolean>;
  release(caseId: string): void;
  /** @throws (rejects) when nothing was stored: another page writes, storage is full, the case is full */
  append(caseId: string, drafts: readonly EventDraft[]): Promise<readonly RecordedEvent[]>;
  /** Union by id; site claims that stood lapse in the same transaction. */
  takeIn(incoming: RecordedCase): Promise<TakenIn>;
  forget(caseId: string): Promise<void>;
  close(): void;
}

/** What the store needs from around it; a browser has it all, tests hand in their own. */
export interface Surroundings {
  readonly name: string;
  readonly database: Database | undefined;
  readonly locks: Locks | undefined;
  readonly now: () => Date;
  readonly newDevice: () => string;
  /** How long a storage may take to open before it counts as refused. */
  readonly patienceMilliseconds: number;
}

/** Never fails: where storage is refused, cases live in memory and `volatile` says so. */
export async function openStore(given: Partial<Surroundings> = {}): Promise<CaseStore> {
  const around = { ...ofThisBrowser(), ...given };
  const { shelf, refusal } = await openShelf(around);
  const device = await shelf.setting('device', around.newDevice);
  return caseStore({ shelf, refusal, device, now: around.now, writing: writers(around.locks) });
}

function ofThisBrowser(): Surroundings {
  const { indexedDB, IDBKeyRange, navigator } = globalThis;
  return {
    name: 'ohmwell',
    database: indexedDB === undefined ? undefined : { indexedDB, IDBKeyRange },
    locks: navigator?.locks,
    now: () => new Date(),
    newDevice: () => crypto.randomUUID().slice(0, 8),
    patienceMilliseconds: 5000,
  };
}

interface OpenedShelf {
  readonly shelf: Shelf;
  readonly refusal: string | undefined;
}

/** A shelf is proved by writing to it: some browsers open a database and refuse the first write. */
async function openShelf({
  name,
  database,
  newDevice,
  patienceMilliseconds,
}: Surroundings): Promise<OpenedShelf> {
  if (database === undefined) return { shelf: memoryShelf(), refusal: 'this browser has no storage' };
  try {
    const shelf = await inTime(browserShelf(name, database), patienceMilliseconds);
    await inTime(shelf.setting('device', newDevice), patienceMilliseconds);
    return { shelf, refusal: undefined };
  } catch (error) {
    return { shelf: memoryShelf(), refusal: error instanceof Error ? error.message : String(error) };
  }
}

async function inTime<T>(work: Promise<T>, milliseconds: number): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('storage did not answer in time')), milliseconds);
  });
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}

interface Inside extends OpenedShelf {
  readonly device: string;
  readonly now: () => Date;
  readonly writing: Writers;
}

function caseStore(inside: Inside): CaseStore {
  const { shelf, refusal, device, writing } = inside;
  return {
    volatile: refusal !== undefined,
    refusal,
    device,
    list: async () => summaries(await shelf.all()),
    read: async (caseId) => readRows(caseId, await shelf.rows(caseId)),
    hold: writing.hold,
    release: writing.release,
    append: (caseId, drafts) => append(inside, caseId, drafts),
    takeIn: (incoming) => takeIn(inside, incoming),
    forget: async (caseId) => {
      await mustHold(inside, caseId);
      await shelf.remove(caseId);
      writing.release(caseId);
    },
    close: shelf.close,
  };
}

async function append(
  inside: Inside,
  caseId: string,
  drafts: readonly EventDraft[],
): Promise<readonly RecordedEvent[]> {
  await mustHold(inside, caseId);
  let events: readonly RecordedEvent[] = [];
  await inside.shelf.add(caseId, (present) => {
    events = numberDrafts(present, drafts, stampOf(inside, caseId));
    return events.map((event) => rowOf(caseId, event));
  });
  return events;
}

const stampOf = ({ device, now }: Inside, caseId: string) => ({
  case: caseId,
  device,
  at: now().toISOString(),
});

async function mustHold({ writing }: Inside, caseId: string): Promise<void> {
  if (!(await writing.hold(caseId)))
    throw new Error('This case is open in another window. Write there, or close it.');
}

async function takeIn(inside: Inside, incoming: RecordedCase): Promise<TakenIn> {
  const { case: caseId, events } = incoming;
  await mustHold(inside, caseId);
  let taken: TakenIn = { added: 0, conflicts: [] };
  await inside.shelf.add(caseId, (present) => {
    const ours = readRows(caseId, present);
    const ids = new Set(present.map(({ id }) => id));
    const merged = mergeEvents(ours.events, events);
    const added = merged.added.filter(({ id }) => !ids.has(id));
    taken = { added: added.length, conflicts: merged.conflicts };
    const lapsed = lapseAfter(inside, [...present, ...added], {
      case: caseId,
      events: [...ours.events, ...added],
    });
    return [...added, ...(added.length > 0 ? lapsed : [])].map((event) => rowOf(caseId, event));
  });
  return taken;
}

/** What another device claimed about the site is history here; the lapse comes after all that is stored. */
function lapseAfter(
  inside: Inside,
  numbered: readonly { id: string }[],
  whole: RecordedCase,
): RecordedEvent[] {
  const moment = { reason: 'import', lastEventAt: undefined, now: inside.now(), lapseMinutes: 0 } as const;
  const due = lapseDue(foldCase(whole.case, whole.events), moment);
  return due === undefined ? [] : numberDrafts(numbered, [due], stampOf(inside, whole.case));
}

/**
 * Asks the browser to keep what is stored even when space runs short. It may refuse without saying
 * why; then only exporting protects a case.
 */
export async function askToKeep(
  storage: Pick<StorageManager, 'persist' | 'persisted'> | undefined,
): Promise<'kept' | 'may-be-cleared'> {
  const kept = (await storage?.persisted?.()) === true || (await storage?.persist?.()) === true;
  return kept ? 'kept' : 'may-be-cleared';
}
