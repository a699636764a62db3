import { expect, test } from 'vitest';
import type { CallView } from '../../../machines/call/types.ts';
import { type Channel, connectEngine } from '../../../src/app/worker/engine-client.ts';
import type { FromEngine, ToEngine } from '../../../src/app/worker/protocol.ts';
import { foldCase } from '../../../src/records/fold.ts';

const state = foldCase('larch-hollow-2345', []);

/** A worker that is a list of messages: the test answers them itself, in any order. */
function fakeWorker() {
  const asked: ToEngine[] = [];
  let hear: (message: FromEngine) => void = () => undefined;
  let fail: (message: string) => void = () => undefined;
  const channel: Channel = {
    post: (message) => void asked.push(message),
    onMessage: (listener) => {
      hear = listener;
    },
    onError: (listener) => {
      fail = listener;
    },
  };
  return { channel, asked, say: (data: FromEngine) => hear(data), die: (message: string) => fail(message) };
}

/** Only told apart by its version here. */
const viewCalled = (contentVersion: string): CallView => ({
  contentVersion,
  visit: 'opening',
  site: {
    word: 'live',
    supply: 'live',
    places: { panel: 'closed', switch: 'closed', box: 'closed', well: 'closed' },
    leads: 'connected',
    charge: 'possible',
    disinfection: 'none',
    secondSource: 'possible',
    stopped: false,
    here: undefined,
    lapsed: false,
  },
  next: { kind: 'stopped', safeState: [] },
  suspects: [],
  judged: [],
  windows: {},
  trail: [],
  surprise: undefined,
  assumed: [],
});

test('of the questions that come up meanwhile only the newest is asked, and answers them all', async () => {
  const worker = fakeWorker();
  const engine = connectEngine(worker.channel);
  const first = engine.view(state);
  const second = engine.view(state);
  const third = engine.view(state);
  expect(worker.asked).toHaveLength(1);
  worker.say({ kind: 'view', ask: worker.asked[0]!.ask, view: viewCalled('first') });
  expect(worker.asked).toHaveLength(2);
  worker.say({ kind: 'view', ask: worker.asked[1]!.ask, view: viewCalled('third') });
  const versions = (await Promise.all([first, second, third])).map((view) => view.contentVersion);
  expect(versions).toEqual(['first', 'third', 'third']);
});

test('an answer to a question that nobody asked is left lying', async () => {
  const worker = fakeWorker();
  const engine = connectEngine(worker.channel);
  const open = engine.view(state);
  worker.say({ kind: 'view', ask: 99, view: viewCalled('stray') });
  worker.say({ kind: 'view', ask: worker.asked[0]!.ask, view: viewCalled('mine') });
  expect((await open).contentVersion).toBe('mine');
});

test('an engine that cannot answer says so in its own words', async () => {
  const worker = fakeWorker();
  const engine = connectEngine(worker.channel);
  const answer = engine.view(state);
  worker.say({ kind: 'failed', ask: worker.asked[0]!.ask, message: 'plant: floating node box.Y' });
  await expect(answer).rejects.toThrow('plant: floating node box.Y');
});

test('a worker that dies answers every open and every later question with its error', async () => {
  const worker = fakeWorker();
  const engine = connectEngine(worker.channel);
  const open = engine.view(state);
  worker.die('out of memory');
  await expect(open).rejects.toThrow('out of memory');
  await expect(engine.view(state)).rejects.toThrow('out of memory');
  expect((await engine.loaded).kind).toBe('bad-content');
});

test('content that fails its check is handed on with its problems', async () => {
  const worker = fakeWorker();
  const engine = connectEngine(worker.channel);
  worker.say({ kind: 'bad-content', problems: [{ at: 'faults/a', message: 'no action', hint: 'add one' }] });
  expect(await engine.loaded).toMatchObject({ kind: 'bad-content', problems: [{ at: 'faults/a' }] });
});
