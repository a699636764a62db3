import type { NextStep } from '../../../machines/call/types.ts';
import type { JudgedReading, Verdict } from '../../diagnosis/types.ts';
import { type Ended, judgeEnd } from './judge-call.ts';
import type { PlayedCall } from './play-call.ts';
import type { Truth } from './truth.ts';

/**
 * What follows a verdict: the repair that it advises, the proof readings, and, where those show that it
 * did not help, the search again, once.
 *
 * A right repair mends the plant; a wrong one leaves it as it was. The technician says "it did not help"
 * when a number among the proof readings is not as expected, as the screen offers it. Proving takes long
 * and a right repair is found whatever its proof shows, so only some of those are proved.
 */
export interface Visit {
  readonly foundInVisit: boolean;
  /** The repair was played to the end of its proof. */
  readonly proved: boolean;
  readonly minutes: number;
  /** A right repair whose proof readings look wrong. */
  readonly proofDoubts: readonly string[];
  /** A wrong repair whose proof readings look right. */
  readonly proofMissed: boolean;
  /** After a failed repair the engine advised the same again. */
  readonly saidSameAgain: boolean;
}

export function finishVisit(
  call: PlayedCall,
  first: Ended,
  at: { readonly truth: Truth; readonly provesRight: boolean },
): Visit {
  const { truth } = at;
  if (!first.advises) return visitOf(call, { foundInVisit: false, proved: false });
  if (first.isRight && !at.provesRight) return visitOf(call, { foundInVisit: true, proved: false });
  const odd = repairAndProve(call, first.isRight);
  if (first.isRight) return visitOf(call, { foundInVisit: true, proofDoubts: odd });
  if (odd.length === 0) return visitOf(call, { foundInVisit: false, proofMissed: true });
  call.log.say({ kind: 'visit', type: 'repair-did-not-help' });
  const again = judgeEnd(call.caller.catalog, call.search(), truth);
  return visitOf(call, { foundInVisit: again.found, saidSameAgain: again.action === first.action });
}

function visitOf(call: PlayedCall, found: Pick<Visit, 'foundInVisit'> & Partial<Visit>): Visit {
  return {
    proved: true,
    minutes: call.tally.minutes,
    proofDoubts: [],
    proofMissed: false,
    saidSameAgain: false,
    ...found,
  };
}

const STEPS_MOST = 60;

/** @returns numbers among the proof readings that are not as expected */
function repairAndProve(call: PlayedCall, mends: boolean): string[] {
  call.log.say({ kind: 'visit', type: 'consent-given' });
  for (let step = 0; step < STEPS_MOST; step++) {
    const seen = call.look();
    const { next } = seen.view;
    if (next.kind !== 'repair' && next.kind !== 'proof') return oddOf(next);
    if (next.steps.length > 0) call.doSteps(next.steps, seen);
    else if (next.kind === 'repair') repair(call, next.verdict);
    else if (next.check !== undefined) takeAsLeft(call, next.check.check, mends);
    else return oddOf(next);
  }
  throw new Error('prove: a repair that never ends; look at machines/call/proof.ts');
}

function repair(call: PlayedCall, verdict: Verdict): void {
  const action = call.caller.catalog.actions[verdict.action];
  if (action !== undefined) call.tally.minutes += (action.minutes.low + action.minutes.high) / 2;
  call.log.say({ kind: 'visit', type: 'repaired' });
}

function takeAsLeft(call: PlayedCall, id: string, mends: boolean): void {
  const check = call.check(id);
  call.log.say({ kind: 'answer', check: id, reading: call.caller.site.read(check, mends), asLeft: true });
  call.count(check);
}

function oddOf(next: NextStep): string[] {
  return next.kind === 'proof' ? next.done.filter(isOdd).map(({ check }) => check) : [];
}

const isOdd = ({ outcome, reading }: JudgedReading): boolean =>
  'value' in reading && outcome !== 'as-expected' && outcome !== 'not-taken' && outcome !== 'not-judged';
