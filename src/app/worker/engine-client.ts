import type { CallView } from '../../../machines/call/types.ts';
import type { CaseState } from '../../schema/case-state.ts';
import type { Engine, FromEngine, Loaded, ToEngine } from './protocol.ts';

/** What is needed of a worker; a test hands in a channel of its own. */
export interface Channel {
  post(message: ToEngine): void;
  onMessage(listener: (message: FromEngine) => void): void;
  onError(listener: (message: string) => void): void;
}

export function channelOf(worker: Worker): Channel {
  return {
    post: (message) => worker.postMessage(message),
    onMessage: (listener) =>
      worker.addEventListener('message', ({ data }: MessageEvent<FromEngine>) => listener(data)),
    onError: (listener) => worker.addEventListener('error', ({ message }) => listener(message)),
  };
}

interface Question {
  readonly ask: number;
  readonly state: CaseState;
  readonly waiting: Waiting[];
}

interface Waiting {
  resolve(view: CallView): void;
  reject(reason: Error): void;
}

/**
 * Talks to the engine in its worker: one question at a time, and only the newest of those that came
 * up meanwhile. Whoever asked an older one gets the newer answer: the older case no longer stands.
 *
 * A worker that dies answers every open question with an error and every later one too; nothing is
 * retried, because an engine that failed once on these readings gives no advice on them.
 */
export function connectEngine(channel: Channel): Engine {
  const asking = askOneByOne(channel);
  let settle: (loaded: Loaded) => void = () => undefined;
  const loaded = new Promise<Loaded>((resolve) => {
    settle = resolve;
  });
  channel.onMessage((data) => {
    if (data.kind === 'ready' || data.kind === 'bad-content') settle(data);
    else asking.answered(data);
  });
  channel.onError((message) => {
    asking.died(new Error(message));
    settle({ kind: 'bad-content', problems: [{ at: 'engine', message, hint: 'open the page again' }] });
  });
  return { loaded, view: asking.view };
}

type Answer = Extract<FromEngine, { ask: number }>;

function askOneByOne(channel: Channel) {
  let asked = 0;
  let dead: Error | undefined;
  let inFlight: Question | undefined;
  let newest: Question | undefined;
  const post = (question: Question | undefined): void => {
    inFlight = question;
    if (question !== undefined) channel.post({ ask: question.ask, state: question.state });
  };
  return {
    view: (state: CaseState): Promise<CallView> => {
      if (dead !== undefined) return Promise.reject(dead);
      asked += 1;
      const ask = asked;
      return new Promise<CallView>((resolve, reject) => {
        const question = { ask, state, waiting: [...(newest?.waiting ?? []), { resolve, reject }] };
        if (inFlight === undefined) post(question);
        else newest = question;
      });
    },
    answered: (data: Answer): void => {
      if (data.ask !== inFlight?.ask) return;
      const { waiting } = inFlight;
      post(newest);
      newest = undefined;
      for (const one of waiting) {
        if (data.kind === 'view') one.resolve(data.view);
        else one.reject(new Error(data.message));
      }
    },
    died: (reason: Error): void => {
      dead = reason;
      for (const one of [...(inFlight?.waiting ?? []), ...(newest?.waiting ?? [])]) one.reject(reason);
      inFlight = undefined;
      newest = undefined;
    },
  };
}
