import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import { browserShelf } from '../../src/records/browser-shelf.ts';
import { foldCase } from '../../src/records/fold.ts';
import type { EventDraft } from '../../src/records/recorded.ts';
import { askToKeep, type CaseStore, openStore, type Surroundings } from '../../src/records/store.ts';
import { CASE, idOf, numbered, ohms, said } from './support/events.ts';
import { oneWindow } from './support/locks.ts';

const NOW = new Date('2026-03-01T09:30:00Z');
let database: { indexedDB: IDBFactory; IDBKeyRange: typeof IDBKeyRange };

beforeEach(() => {
  database = { indexedDB: new IDBFactory(), IDBKeyRange };
});

const open = (more: Partial<Surroundings> = {}): Promise<CaseStore> =>
  openStore({ database, locks: undefined, now: () => NOW, newDevice: () => 'us', ...more });
const opened: EventDraft = { kind: 'opened', site: 'Larch Hollow' };

describe.each([
  ['in the browser', () => open()],
  ['in memory', () => open({ database: undefined })],
])('a store %s', (_, make) => {
  test('numbers and stamps what is appended, and reads it back', async () => {
    const store = await make();
    const stored = await store.append(CASE, [opened, ohms('ohms-yellow-black', 4.2)]);
    expect(stored.map(({ id, at }) => [id, at])).toEqual([
      [idOf(1), NOW.toISOString()],
      [idOf(2), NOW.toISOString()],
    ]);
    expect(await store.read(CASE)).toEqual({ case: CASE, events: stored, problems: [] });
  });
  test('numbers on after the highest sequence of any device', async () => {
    const store = await make();
    await store.takeIn({ case: CASE, events: [{ ...ohms('ohms-yellow-black', 3), id: idOf(41, 'them') }] });
    expect((await store.append(CASE, [opened]))[0]?.id).toBe(idOf(42));
  });
  test('two taps at once get two ids', async () => {
    const store = await make();
    await Promise.all([store.append(CASE, [opened]), store.append(CASE, [opened])]);
    expect((await store.read(CASE)).events.map(({ id }) => id)).toEqual([idOf(1), idOf(2)]);
  });
  test('refuses what is no event, all of it, and says which field', async () => {
    const store = await make();
    const negative: EventDraft = {
      kind: 'answer',
      check: 'ohms-yellow-black',
      reading: { value: [-1, 'ohm'] },
    };
    await expect(store.append(CASE, [opened, negative])).rejects.toThrow('reading › value[0]');
    expect((await store.read(CASE)).events).toEqual([]);
  });
  test('lists cases, the newest first, and forgets one for good', async () => {
    const store = await make();
    await store.takeIn({
      case: 'older',
      events: [{ ...opened, id: 'older:000001:them', at: '2025-01-01T00:00:00+02:00' }],
    });
    await store.append(CASE, [opened, ohms('ohms-yellow-black', 4.2)]);
    expect(await store.list()).toMatchObject([
      { case: CASE, site: 'Larch Hollow', readings: 1, startedAt: NOW.toISOString(), damaged: 0 },
      { case: 'older', readings: 0, startedAt: '2024-12-31T22:00:00.000Z' },
    ]);
    await store.forget(CASE);
    expect((await store.list()).map((one) => one.case)).toEqual(['older']);
    expect((await store.read(CASE)).events).toEqual([]);
  });
});

describe('taking a case in', () => {
  test('twice adds nothing the second time', async () => {
    const store = await open();
    const events = numbered([opened, ohms('ohms-yellow-black', 3)], 'them');
    expect(await store.takeIn({ case: CASE, events })).toEqual({ added: 2, conflicts: [] });
    expect(await store.takeIn({ case: CASE, events })).toEqual({ added: 0, conflicts: [] });
  });
  test('makes what was claimed about the site lapse', async () => {
    const store = await open();
    await store.takeIn({ case: CASE, events: numbered([said('locked'), said('proved')], 'them') });
    const { events } = await store.read(CASE);
    expect(events.at(-1)).toMatchObject({ id: idOf(3), kind: 'site', event: { type: 'lapsed' } });
    expect(foldCase(CASE, events).siteEvents.at(-1)?.said.type).toBe('lapsed');
  });
  test('keeps ours where theirs differs, and reports it', async () => {
    const store = await open();
    const ours = await store.append(CASE, [ohms('ohms-yellow-black', 3)]);
    const theirs = numbered([ohms('ohms-yellow-black', 33)]);
    expect(await store.takeIn({ case: CASE, events: theirs })).toMatchObject({
      added: 0,
      conflicts: [{ id: idOf(1) }],
    });
    expect((await store.read(CASE)).events).toEqual(ours);
  });
});

test('another start of the page finds the same events and the same device', async () => {
  const first = await open();
  await first.append(CASE, [opened]);
  first.close();
  const second = await open({ newDevice: () => 'another' });
  expect(second.device).toBe('us');
  expect((await second.read(CASE)).events).toHaveLength(1);
});

test('a connection that was cut is opened again', async () => {
  const store = await open();
  await store.append(CASE, [opened]);
  store.close();
  await store.append(CASE, [opened]);
  expect((await store.read(CASE)).events).toHaveLength(2);
});

test('a damaged event is reported, skipped, kept, and its id is never used again', async () => {
  const shelf = await browserShelf('ohmwell', database);
  await shelf.add(CASE, () => [
    { id: idOf(1), case: CASE, event: { ...opened, id: idOf(1) } },
    {
      id: idOf(2),
      case: CASE,
      event: { kind: 'answer', id: idOf(2), check: 'x', reading: { value: ['4', 'ohm'] } },
    },
    { id: idOf(3), case: CASE, event: { ...opened, id: idOf(9) } },
    { id: 'no id at all', case: CASE, event: null },
  ]);
  shelf.close();
  const store = await open();
  const found = await store.read(CASE);
  expect(found.events.map(({ id }) => id)).toEqual([idOf(1)]);
  expect(found.problems.map(({ at }) => at).sort()).toEqual(
    [`stored event ${idOf(2)}`, `stored event ${idOf(3)}`, 'stored event no id at all'].sort(),
  );
  expect((await store.append(CASE, [opened]))[0]?.id).toBe(idOf(4));
  store.close();
  const again = await browserShelf('ohmwell', database);
  expect(await again.rows(CASE)).toHaveLength(5);
});

describe('where storage is refused', () => {
  const refusing: IDBFactory = Object.assign(new IDBFactory(), {
    open: () => {
      throw new DOMException('not here', 'SecurityError');
    },
  });
  const silent: IDBFactory = Object.assign(new IDBFactory(), { open: () => new EventTarget() });

  test.each([
    ['no database at all', { database: undefined }],
    ['a database that refuses', { database: { indexedDB: refusing, IDBKeyRange } }],
    [
      'a database that never answers',
      { database: { indexedDB: silent, IDBKeyRange }, patienceMilliseconds: 50 },
    ],
  ])('%s: cases live in memory and the store says so', async (_, around) => {
    const store = await open(around);
    expect(store.volatile).toBe(true);
    expect(store.refusal).not.toBe(undefined);
    await store.append(CASE, [opened]);
    expect((await store.read(CASE)).events).toHaveLength(1);
  });
  test('a store that keeps does not say so', async () => {
    expect(await open()).toMatchObject({ volatile: false, refusal: undefined });
  });
});

describe('one writer per case', () => {
  test('a second window may read and not write, until the first lets go', async () => {
    const locks = oneWindow();
    const [first, second] = [await open({ locks }), await open({ locks })];
    await first.append(CASE, [opened]);
    expect(await second.hold(CASE)).toBe(false);
    await expect(second.append(CASE, [opened])).rejects.toThrow('another window');
    await expect(second.forget(CASE)).rejects.toThrow('another window');
    expect((await second.read(CASE)).events).toHaveLength(1);
    expect(await second.hold('another-case')).toBe(true);
    first.release(CASE);
    expect(await second.hold(CASE)).toBe(true);
    await second.append(CASE, [opened]);
    expect((await second.read(CASE)).events).toHaveLength(2);
  });
  test('the same window asks as often as it likes', async () => {
    const store = await open({ locks: oneWindow() });
    expect(await Promise.all([store.hold(CASE), store.hold(CASE)])).toEqual([true, true]);
  });
});

test('asking the browser to keep what is stored', async () => {
  const saying = (persisted: boolean, persist: boolean) =>
    ({ persisted: async () => persisted, persist: async () => persist }) satisfies Partial<StorageManager>;
  expect(await askToKeep(saying(false, true))).toBe('kept');
  expect(await askToKeep(saying(true, false))).toBe('kept');
  expect(await askToKeep(saying(false, false))).toBe('may-be-cleared');
  expect(await askToKeep(undefined)).toBe('may-be-cleared');
});
