import { Worker } from 'node:worker_threads';
import type { Job } from './jobs.ts';
import type { CallResult } from './play-job.ts';
import type { Played, Unit, WorkerSettings } from './worker.ts';

/**
 * Plays blocks of calls on all cores: each worker takes the next unit of blocks when it is done with one.
 *
 * What comes back is put into the order of the blocks, so that the number of workers changes nothing.
 */
export interface Run {
  readonly workers: number;
  /** File of the built worker. */
  readonly script: string;
  readonly settings: WorkerSettings;
  progress(done: number, of: number): void;
}

export async function runJobs(jobs: readonly Job[], run: Run): Promise<CallResult[]> {
  const results: (readonly CallResult[])[] = jobs.map(() => []);
  const units = unitsOf(jobs);
  const total = jobs.reduce((sum, job) => sum + job.count, 0);
  let done = 0;
  const work = (): Promise<void> =>
    new Promise((finish, fail) => {
      const worker = new Worker(run.script, { workerData: run.settings });
      const give = (): void => {
        const unit = units.shift();
        if (unit === undefined) void worker.terminate().then(() => finish());
        else worker.postMessage(unit);
      };
      worker.on('error', fail);
      worker.on('message', ({ at, calls, isLast }: Played) => {
        results[at] = calls;
        done += calls.length;
        run.progress(done, total);
        if (isLast) give();
      });
      give();
    });
  await Promise.all(Array.from({ length: Math.min(run.workers, units.length) }, work));
  return results.flat();
}

/** Blocks of one known installation together, since they share its predictions; the largest first. */
function unitsOf(jobs: readonly Job[]): Unit[] {
  const units = new Map<string, { at: number; job: Job }[]>();
  for (const [at, job] of jobs.entries()) {
    const key = `${job.row.id} ${job.hidden.join()} ${job.tells}`;
    units.set(key, [...(units.get(key) ?? []), { at, job }]);
  }
  const calls = (unit: Unit): number => unit.reduce((sum, { job }) => sum + job.count, 0);
  return [...units.values()].sort((one, other) => calls(other) - calls(one));
}
