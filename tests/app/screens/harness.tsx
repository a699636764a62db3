import { act, render } from '@testing-library/react';
import { Suspense } from 'react';
import type { CallView } from '../../../machines/call/types.ts';
import { App } from '../../../src/app/App.tsx';
import { trackPresence } from '../../../src/app/hooks/presence.ts';
import type { Engine } from '../../../src/app/worker/protocol.ts';
import type { EventDraft } from '../../../src/records/recorded.ts';
import { type CaseStore, openStore } from '../../../src/records/store.ts';
import type { CaseState } from '../../../src/schema/case-state.ts';
import { LIVE } from '../parts/support/scenes.ts';
import { content } from './content.ts';

export const CASE = 'larch-hollow-2345';

/** What a test sets on stage: the case so far, and what the engine makes of it. */
export interface Stage {
  readonly hash: string;
  readonly events?: readonly EventDraft[];
  view?(state: CaseState): CallView;
  /** The browser refuses to store. */
  readonly refusesStorage?: boolean;
}

let stages = 0;

/** The app on a device of its own, with the real content and an engine that the test speaks for. */
export async function stage({ hash, events = [], view = nothingYet, refusesStorage = false }: Stage) {
  stages += 1;
  const store = await openStore({
    name: `stage-${stages}`,
    locks: undefined,
    newDevice: () => 'test',
    ...(refusesStorage ? { database: undefined } : {}),
  });
  if (events.length > 0) await store.append(CASE, events);
  const engine: Engine = {
    loaded: Promise.resolve({ kind: 'ready', catalog: content() }),
    view: async (state) => view(state),
  };
  window.location.hash = hash;
  const kept = Promise.resolve(store);
  await act(async () => {
    render(
      <Suspense fallback="…">
        <App engine={engine} store={kept} presence={trackPresence(() => Date.now())} update={undefined} />
      </Suspense>,
    );
  });
  return { store };
}

export async function eventsOf(store: CaseStore) {
  return (await store.read(CASE)).events;
}

/** A call that has come to nothing yet; a test lays its own step over it. */
export function callView(over: Partial<CallView> & Pick<CallView, 'next'>): CallView {
  return {
    contentVersion: 'test',
    visit: 'diagnose',
    site: LIVE,
    suspects: [],
    judged: [],
    windows: {},
    trail: [],
    surprise: undefined,
    assumed: [],
    ...over,
  };
}

const nothingYet = (): CallView => callView({ next: { kind: 'stopped', safeState: [] } });
