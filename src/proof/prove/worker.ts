import { parentPort, workerData } from 'node:worker_threads';
import type { ProposedBy } from '../../../machines/call/types.ts';
import { catalogFrom } from '../content.ts';
import type { Job } from './jobs.ts';
import { type CallResult, playJob, type Sweep } from './play-job.ts';
import { refittedCatalogs } from './plays.ts';

/** One core of the sweep: takes a block of calls, hands back what came of them, asks for the next. */
export interface WorkerSettings {
  readonly content: string;
  readonly seed: number;
  readonly proposedBy: ProposedBy;
  readonly sequence: readonly string[];
}

export function sweepWith(settings: WorkerSettings): Sweep {
  const built = catalogFrom(settings.content);
  if ('problems' in built) throw new Error('prove: the content has problems: npm run check:content');
  const { catalog } = built;
  let refitted: Sweep['refitted'] | undefined;
  return {
    catalog,
    /** Fitted when the first mismatch call is played: it takes a second. */
    get refitted() {
      refitted ??= refittedCatalogs(catalog);
      return refitted;
    },
    proposedBy: settings.proposedBy,
    seed: settings.seed,
    sequence: settings.sequence,
  };
}

/** Blocks that share one known installation, each with its place among all blocks. */
export type Unit = readonly { readonly at: number; readonly job: Job }[];

export interface Played {
  readonly at: number;
  readonly calls: readonly CallResult[];
  /** The last of its unit: the worker is free. */
  readonly isLast: boolean;
}

const port = parentPort;
if (port !== null) {
  const sweep = sweepWith(workerData as WorkerSettings);
  port.on('message', (unit: Unit) => {
    for (const [index, { at, job }] of unit.entries()) {
      const played: Played = { at, calls: playJob(sweep, job), isLast: index === unit.length - 1 };
      port.postMessage(played);
    }
  });
}
