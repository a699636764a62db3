import { viewCall } from '../../../machines/call/call.ts';
import type { CallView, NextStep } from '../../../machines/call/types.ts';
import type { Verdict } from '../../../src/diagnosis/types.ts';
import { foldCase } from '../../../src/records/fold.ts';
import type { Person } from '../../../src/schema/basics.ts';
import type { CaseEventInput } from '../../../src/schema/case.ts';
import type { CaseState } from '../../../src/schema/case-state.ts';
import { catalog } from '../../journeys/content.ts';
import { siteOf, type Truth } from '../../journeys/truth.ts';

/** A call played without a screen: the engine asks, a simulated site answers. */
export interface Played {
  /** Checks asked, in order. */
  readonly checks: readonly string[];
  readonly minutes: number;
  readonly end: NextStep;
  readonly state: CaseState;
  readonly views: readonly { readonly state: CaseState; readonly view: CallView }[];
}

const STEPS_MOST = 100;

export function play(truth: Truth, role: Person = 'qualified'): Played {
  const known = catalog();
  const site = siteOf(known, truth);
  const events: CaseEventInput[] = [
    { kind: 'person', role },
    { kind: 'installation', set: truth.installation },
  ];
  const checks: string[] = [];
  const views: { state: CaseState; view: CallView }[] = [];
  let minutes = 0;
  for (let step = 0; step < STEPS_MOST; step++) {
    const state = stateOf(events);
    const view = viewCall(known, state);
    views.push({ state, view });
    const { next } = view;
    if (next.kind === 'site-steps') {
      for (const { says, minutes: taken } of next.steps) {
        events.push({ kind: 'site', event: { ...says } });
        minutes += taken;
      }
    } else if (next.kind === 'check') {
      for (const { check } of next.checks) {
        events.push({ kind: 'answer', check, reading: site.read(check) });
        checks.push(check);
        minutes += known.checks[check]?.minutes.hands ?? 0;
      }
    } else if (next.kind === 'ask-installation') {
      events.push({ kind: 'visit', type: `${next.field}-unknown` });
    } else {
      return { checks, minutes, end: next, state, views };
    }
  }
  throw new Error(`play: no end after ${STEPS_MOST} steps of ${truth.fault}: ${checks.join(', ')}`);
}

export function stateOf(events: readonly CaseEventInput[]): CaseState {
  return foldCase(
    'larch-hollow-1',
    events.map((event, index) => ({
      id: `larch-hollow-1:${String(index + 1).padStart(6, '0')}:test`,
      ...event,
    })),
  );
}

export function verdictOf(played: Played): Verdict {
  if (played.end.kind !== 'verdict') throw new Error(`play: ended in ${played.end.kind}, not in a verdict`);
  return played.end.verdict;
}
