import { figure } from '../../src/diagnosis/judgements.ts';
import type { JudgedReading, Verdict } from '../../src/diagnosis/types.ts';
import { judge } from '../../src/diagnosis/windows/judge.ts';
import { missingSteps, owedBeforeClosing, stepsToService } from '../worksite/steps.ts';
import type { OpenCall } from './call.ts';
import { viewOf } from './next-step.ts';
import type { NextStep } from './types.ts';

/**
 * After the repair: take the installation into service again, read what proves the repair, and do
 * not close over a duty. Readings as left are kept apart from what was found.
 *
 * @returns undefined while the repair has not been said to be done
 */
export function proofStep(call: OpenCall, verdict: Verdict): NextStep | undefined {
  const { isRepaired, isClosed, owesDisinfection } = call.visit;
  if (isClosed || owesDisinfection)
    return { kind: 'closed', verdict, owed: owedBeforeClosing(call.work.site) };
  if (!isRepaired) return undefined;
  const done = asLeft(call);
  const left = verdict.proof
    .map((window) => window.check)
    .filter((check) => !done.some((one) => one.check === check));
  const ways = left.flatMap((check) => {
    const record = call.catalog.checks[check];
    const way = record === undefined ? undefined : missingSteps(record, call.work, call.minutesOf);
    return way?.possible ? [{ check, steps: way.steps }] : [];
  });
  const [first] = ways;
  const step = { kind: 'proof', done, verdict } as const;
  if (first !== undefined)
    return { ...step, steps: first.steps, check: viewOf(call.readings, first.check), cannotRead: [] };
  const home = stepsToService(call.work, call.minutesOf);
  return { ...step, steps: home.possible ? home.steps : [], check: undefined, cannotRead: left };
}

function asLeft(call: OpenCall): JudgedReading[] {
  const noneShare = figure(call.catalog.judgements, 'none-share');
  return call.state.asLeft.flatMap(({ check, reading }) => {
    const window = call.readings.windows[check];
    return window === undefined ? [] : [judge(reading, window, noneShare)];
  });
}
