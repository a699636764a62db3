import { performance } from 'node:perf_hooks';

/**
 * How fast is it? Work is repeated for a while, in rounds, and the best round counts: what disturbs a
 * shared machine only ever makes it slower. Rates are by seconds of processor time, so that others on
 * the same machine do not count; what a person waits for is by the clock on the wall.
 */
export interface Timing {
  readonly rounds: number;
  readonly millisecondsEach: number;
}

export const USUAL: Timing = { rounds: 5, millisecondsEach: 400 };

/** Seconds of processor time since a mark. */
function processorSeconds(since: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1e6;
}

/** @returns how often in a second of processor time the work was done in the best round */
export function perSecond(work: () => void, timing: Timing = USUAL): number {
  let best = 0;
  for (let round = 0; round < timing.rounds; round++) {
    const from = performance.now();
    const mark = process.cpuUsage();
    let done = 0;
    while (performance.now() - from < timing.millisecondsEach) {
      work();
      done++;
    }
    best = Math.max(best, done / processorSeconds(mark));
  }
  return best;
}

/** The same for work that answers later, one after the other, in one long round. */
export async function perSecondLater(work: () => Promise<unknown>, timing: Timing = USUAL): Promise<number> {
  const from = performance.now();
  const mark = process.cpuUsage();
  let done = 0;
  while (performance.now() - from < timing.rounds * timing.millisecondsEach) {
    await work();
    done++;
  }
  return done / processorSeconds(mark);
}

/** Milliseconds that one piece of work took. */
export function millisecondsOf(work: () => void): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}

/**
 * The value below which a share of the numbers lies.
 *
 * @throws when there are none
 *
 * @example
 * quantile([3, 1, 2], 0.5) // => 2
 */
export function quantile(numbers: readonly number[], share: number): number {
  const sorted = [...numbers].sort((one, other) => one - other);
  const at = Math.min(sorted.length - 1, Math.floor(share * sorted.length));
  const found = sorted[at];
  if (found === undefined) throw new Error('proof: no numbers to take a quantile of; measure first');
  return found;
}
