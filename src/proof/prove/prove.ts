import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ProposedBy } from '../../../machines/call/types.ts';
import { catalogFrom } from '../content.ts';
import { type Figures, figuresOf } from './figures.ts';
import { type Counts, jobsFor, type Order } from './jobs.ts';
import { installationRows } from './matrix.ts';
import { optimumOf } from './optimum.ts';
import type { CallResult } from './play-job.ts';
import { runJobs } from './run.ts';

/** The whole sweep: which calls, on how many cores, and what their figures are. */
export interface Asked {
  /** Folder of the content, and the built script of the workers. */
  readonly content: string;
  readonly script: string;
  readonly workers: number;
  readonly seed: number;
  readonly by: ProposedBy;
  readonly counts: Counts;
  progress(done: number, of: number): void;
}

/** Enough calls for the bounds that are promised: 3,000 clean and 10,000 noisy by prior. */
export const FULL: Counts = {
  clean: { prior: 3000, uniform: 2000 },
  noisy: { prior: 10000, uniform: 2000 },
  mismatch: { prior: 3000, uniform: 2000 },
  yardstick: 400,
  pairs: 3,
};

/** A few calls: a look at whether something broke, no measurement. */
export const QUICK: Counts = {
  clean: { prior: 6, uniform: 2 },
  noisy: { prior: 2, uniform: 0 },
  mismatch: { prior: 0, uniform: 0 },
  yardstick: 0,
  rowsOfFamily: 1,
  pairs: 1,
};

/** So many calls of every kind, for a look in between. */
export const countsOf = (calls: number): Counts => {
  const each = { prior: calls, uniform: calls };
  return { clean: each, noisy: each, mismatch: each, yardstick: Math.round(calls / 4), pairs: 2 };
};

export async function prove(asked: Asked): Promise<{ figures: Figures; calls: CallResult[] }> {
  const { content, seed, by, script, workers, progress } = asked;
  const built = catalogFrom(content);
  if ('problems' in built) throw new Error('prove: the content has problems: npm run check:content');
  const { catalog } = built;
  const sequence = sequenceIn(content);
  const yardsticks: Order[] = [
    'catalogue',
    ...(sequence === undefined ? [] : ['sequence' as const]),
    'random',
  ];
  const jobs = jobsFor(installationRows(catalog), asked.counts, yardsticks);
  const settings = { content, seed, proposedBy: by, sequence: sequence ?? [] };
  const calls = await runJobs(jobs, { workers, script, settings, progress });
  const optimum = asked.counts.yardstick > 0 ? optimumOf(catalog, by) : null;
  return { figures: figuresOf(calls, { seed, contentVersion: catalog.version, by, optimum }), calls };
}

/** The competent fixed sequence, where content has one: a record with the ids of its checks in order. */
function sequenceIn(content: string): string[] | undefined {
  const folder = join(content, 'sequences');
  if (!existsSync(folder)) return undefined;
  const [first] = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort();
  if (first === undefined) return undefined;
  const record: unknown = JSON.parse(readFileSync(join(folder, first), 'utf8'));
  const checks = typeof record === 'object' && record !== null ? Reflect.get(record, 'checks') : undefined;
  if (!Array.isArray(checks)) throw new Error(`prove: sequences/${first} names no checks in order`);
  return checks.filter((one): one is string => typeof one === 'string');
}
