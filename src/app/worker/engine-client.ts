import type { CallView } from '../../../machines/call/types.ts';
import type { Engine, FromEngine, Loaded, ToEngine } from './protocol.ts';

/** The part of a Worker that is used; a test hands in a channel of its own. */
export interface Channel {
  postMessage(message: ToEngine): void;
  addEventListener(type: 'message', listener: (event: { data: FromEngine }) => void): void;
  addEventListener(type: 'error', listener: (event: { message: string }) => void): void;
}

interface Waiting {
  resolve(view: CallView): void;
  reject(reason: Error): void;
}

/**
 * Talks to the engine in its worker: one promise per question.
 *
 * A worker that dies answers every open question with an error and every later one too; nothing is
 * retried, because an engine that failed once on these readings gives no advice on them.
 */
export function connectEngine(channel: Channel): Engine {
  const waiting = new Map<number, Waiting>();
  let asked = 0;
  let dead: Error | undefined;
  let settle: (loaded: Loaded) => void = () => undefined;
  const loaded = new Promise<Loaded>((resolve) => {
    settle = resolve;
  });
  channel.addEventListener('message', ({ data }) => {
    if (data.kind === 'ready' || data.kind === 'bad-content') settle(data);
    else answer(waiting, data);
  });
  channel.addEventListener('error', ({ message }) => {
    dead = new Error(message);
    for (const one of waiting.values()) one.reject(dead);
    waiting.clear();
    settle({ kind: 'bad-content', problems: [{ at: 'engine', message, hint: 'open the page again' }] });
  });
  return {
    loaded,
    view: (state) => {
      if (dead !== undefined) return Promise.reject(dead);
      asked += 1;
      const ask = asked;
      return new Promise<CallView>((resolve, reject) => {
        waiting.set(ask, { resolve, reject });
        channel.postMessage({ ask, state });
      });
    },
  };
}

function answer(waiting: Map<number, Waiting>, data: Extract<FromEngine, { ask: number }>): void {
  const one = waiting.get(data.ask);
  waiting.delete(data.ask);
  if (data.kind === 'view') one?.resolve(data.view);
  else one?.reject(new Error(data.message));
}
