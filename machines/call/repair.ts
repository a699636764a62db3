import type { Verdict } from '../../src/diagnosis/types.ts';
import type { Check } from '../../src/schema/check.ts';
import type { Action } from '../../src/schema/fault.ts';
import { missingSteps } from '../worksite/steps.ts';
import type { OpenCall } from './call.ts';
import type { NextStep } from './types.ts';

/**
 * Between the verdict and its proof: the site is made safe for the hands that repair, by the same
 * interlock as for a reading, and only then are the steps of the work shown.
 *
 * @returns undefined while nobody has said that the repair is begun, and once it is done
 */
export function repairStep(call: OpenCall, verdict: Verdict): NextStep | undefined {
  if (call.visit.stage !== 'repair' || call.visit.isRepaired) return undefined;
  const action = call.catalog.actions[verdict.action];
  const work = action === undefined ? undefined : handsIn(action, call);
  if (work === undefined) return { kind: 'repair', steps: [], verdict, refer: undefined };
  const way = missingSteps(work, call.work, call.minutesOf);
  if (way.possible) return { kind: 'repair', steps: way.steps, verdict, refer: undefined };
  return { kind: 'repair', steps: [], verdict, refer: 'who' in way ? way.who : 'qualified' };
}

/** The work as the interlock sees any work: hands behind a cover, locked out and proved dead there. */
function handsIn(action: Action, call: OpenCall): Check | undefined {
  const place = action.place === 'box' && call.work.leadsAt === 'switch' ? 'switch' : action.place;
  if (place === undefined) return undefined;
  return {
    id: action.id,
    at: { look: place },
    instrument: 'hands',
    site: { supply: 'locked', place, cover: 'open', leads: 'any' },
    who: action.who,
    hazards: [],
    minutes: { hands: action.minutes.low, wait: 0 },
    reads: { answers: ['done', 'not-done'] },
    predict: { signs: true },
    from: action.from,
  };
}
