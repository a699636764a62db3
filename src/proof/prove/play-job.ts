import type { ProposedBy } from '../../../machines/call/types.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import type { Person } from '../../schema/basics.ts';
import type { Drawing, Job, Order, PlayName } from './jobs.ts';
import { type Ended, judgeEnd } from './judge-call.ts';
import { wantsOf } from './order.ts';
import { PlayedCall, type Tally } from './play-call.ts';
import { type Offsets, offsetsOf, PLAYS } from './plays.ts';
import { randomFrom, seedOf } from './random.ts';
import { siteOf } from './site.ts';
import { drawTruth, type Ground, groundOf, type Truth, toldAtFirst } from './truth.ts';
import { finishVisit, type Visit } from './visit.ts';

/** All calls of one block, one after the other: they share the predictions of one known installation. */
export interface Sweep {
  readonly catalog: Catalog;
  /** What a mismatch call is played by; at least one. */
  readonly refitted: readonly Catalog[];
  readonly proposedBy: ProposedBy;
  readonly seed: number;
  readonly sequence: readonly string[];
}

/** One call, as plain data that can cross a worker. */
export interface CallResult extends Tally, Ended {
  readonly play: PlayName;
  readonly drawing: Drawing;
  readonly order: Order;
  readonly call: string;
  readonly row: string;
  readonly hidden: readonly string[];
  readonly missing: string | undefined;
  readonly fault: string;
  readonly variant: string;
  readonly severity: number | undefined;
  readonly trueAction: string;
  readonly visit: Visit | undefined;
  readonly milliseconds: number;
}

/** Of the right repairs one in so many is proved. */
const PROVED_EVERY = 8;

const WHO: Person = 'qualified';

export function playJob(sweep: Sweep, job: Job): CallResult[] {
  const grounds = [sweep.catalog, ...(PLAYS[job.play].isMismatch ? sweep.refitted : [])].map((played) =>
    groundOf(played, job),
  );
  return Array.from({ length: job.count }, (_, index) =>
    playOne(sweep, job, { grounds, index: job.first + index }),
  );
}

function playOne(
  sweep: Sweep,
  job: Job,
  { grounds, index }: { grounds: readonly Ground[]; index: number },
): CallResult {
  const from = performance.now();
  const seed = seedOf(sweep.seed, job.play, job.drawing, job.row.id, job.hidden.join(), index);
  const random = randomFrom(seed);
  const play = PLAYS[job.play];
  const offsets = offsetsOf(play, seedOf(seed, 'offsets'));
  const ground = random.pick(play.isMismatch ? grounds.slice(1) : grounds);
  const truth = drawTruth(ground, { random, drawing: job.drawing, factor: offsets.factorOf });
  const missing = play.missesInstrument ? random.pick(metersOf(sweep.catalog)) : undefined;
  const call = callOf(sweep, job, { truth, seed, offsets, missing });
  const ended = judgeEnd(sweep.catalog, call.search(), truth);
  const tally = { ...call.tally, checks: [...call.tally.checks], unsafe: call.tally.unsafe };
  const provesRight = index % PROVED_EVERY === 0;
  const visit = job.order === 'engine' ? finishVisit(call, ended, { truth, provesRight }) : undefined;
  return {
    ...tally,
    ...ended,
    ...{ play: job.play, drawing: job.drawing, order: job.order, row: job.row.id, hidden: job.hidden },
    ...{ call: `${seed}`, missing, severity: truth.severity, visit },
    fault: truth.hypothesis.fault.id,
    variant: truth.hypothesis.variant,
    trueAction: truth.hypothesis.action,
    milliseconds: performance.now() - from,
  };
}

interface Drawn {
  readonly truth: Truth;
  readonly seed: number;
  readonly offsets: Offsets;
  readonly missing: string | undefined;
}

function callOf(sweep: Sweep, job: Job, { truth, seed, offsets, missing }: Drawn): PlayedCall {
  const { catalog, proposedBy, sequence } = sweep;
  const all = Object.keys(catalog.instruments);
  const { order } = job;
  return new PlayedCall({
    catalog,
    proposedBy,
    site: siteOf({ catalog, truth, play: PLAYS[job.play], offsets, who: WHO, seed }),
    who: WHO,
    real: job.row.installation,
    told: toldAtFirst(job),
    tells: job.tells,
    kit: missing === undefined ? [] : all.filter((one) => one !== missing),
    ...(order === 'engine' ? {} : { wants: wantsOf(catalog, { order, sequence, seed }) }),
  });
}

/** What a technician may have left behind; the multimeter that reads ohms and volts is never. */
const ALWAYS_THERE: readonly string[] = ['ohmmeter', 'voltmeter', 'voltmeter-low-range'];

const metersOf = (catalog: Catalog): string[] =>
  Object.values(catalog.instruments)
    .filter((one) => one.kind === 'meter' && !ALWAYS_THERE.includes(one.id))
    .map((one) => one.id);
