import { useCallback, useEffect, useRef, useState } from 'react';
import type { CallView } from '../../../machines/call/types.ts';
import { foldCase } from '../../records/fold.ts';
import type { EventDraft, RecordedEvent } from '../../records/recorded.ts';
import type { CaseState } from '../../schema/case-state.ts';
import { useServices } from './services.tsx';
import { useLapse } from './use-lapse.ts';

/** A case on screen: what was said, what the engine makes of it, and a way to say more. */
export interface OpenCase {
  readonly id: string;
  /** As stored, for the case file. */
  readonly events: readonly RecordedEvent[];
  /** Absent until the stored events are read. */
  readonly state: CaseState | undefined;
  /** Absent until the engine has answered, and after it failed. */
  readonly view: CallView | undefined;
  /** True while an answer to the newest events is awaited. */
  readonly waiting: boolean;
  /** The engine's or the store's own words for why there is no advice. */
  readonly problem: string | undefined;
  /** Resolves once stored, so that a screen never moves on before; false when it could not be. */
  say(...events: EventDraft[]): Promise<boolean>;
  /** Reads the case and asks the engine once more. */
  again(): Promise<void>;
}

type Held = Pick<OpenCase, 'events' | 'state' | 'view' | 'waiting' | 'problem'> & {
  /** The engine has not been told the newest events. */
  readonly isStale: boolean;
};

const NOTHING: Held = {
  events: [],
  state: undefined,
  view: undefined,
  waiting: true,
  problem: undefined,
  isStale: false,
};

/**
 * Reads a case, asks the engine after every event, and makes the site lapse when the page is opened
 * afresh or was away too long. An answer to older events is dropped when a newer question is open.
 *
 * @param isFillingIn the screen only gathers what is known: the engine is asked once, when that
 *   screen is left; only what concerns the site or the person it hears at once
 */
export function useCase(caseId: string, isFillingIn: boolean): OpenCase {
  const { held, setHeld, look } = useHeldCase(caseId);
  const { store } = useServices();
  const say = useCallback(
    async (...events: EventDraft[]): Promise<boolean> => {
      setHeld((before) => ({ ...before, waiting: true }));
      const problem = await store.append(caseId, events).then(() => undefined, messageOf);
      if (problem === undefined) void look(!isFillingIn || events.some(concernsSite));
      else setHeld((before) => ({ ...before, waiting: false, problem }));
      return problem === undefined;
    },
    [store, caseId, isFillingIn, look, setHeld],
  );
  const looked = useLapse(caseId, say);
  useEffect(() => {
    if (looked) void look(!isFillingIn);
  }, [looked, look, isFillingIn]);
  useEffect(() => () => store.release(caseId), [store, caseId]);
  const waiting = held.waiting || (held.isStale && !isFillingIn);
  return { id: caseId, ...held, waiting, say, again: () => look(true) };
}

const concernsSite = (event: EventDraft): boolean => event.kind === 'site' || event.kind === 'person';

/** What is held of a case, and the look that renews it. */
function useHeldCase(caseId: string) {
  const { catalog, store, engine } = useServices();
  const [held, setHeld] = useState<Held>(NOTHING);
  const newest = useRef(0);
  const look = useCallback(
    async (asksEngine: boolean): Promise<void> => {
      newest.current += 1;
      const mine = newest.current;
      const set = (next: Partial<Held>): void => {
        if (mine === newest.current) setHeld((before) => ({ ...before, ...next }));
      };
      const { events } = await store.read(caseId);
      const state = foldCase(caseId, events, catalog.checks);
      set({ events, state, waiting: asksEngine, isStale: !asksEngine });
      if (!asksEngine) return;
      await engine.view(state).then(
        (view) => set({ view, waiting: false, problem: undefined }),
        (reason: unknown) => set({ view: undefined, waiting: false, problem: messageOf(reason) }),
      );
    },
    [store, engine, caseId, catalog],
  );
  return { held, setHeld, look };
}

const messageOf = (reason: unknown): string => (reason instanceof Error ? reason.message : String(reason));
