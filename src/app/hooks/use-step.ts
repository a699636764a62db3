import { useEffect, useMemo, useState } from 'react';
import type { CallView, CheckView, NextStep } from '../../../machines/call/types.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import type { RankedCheck } from '../../diagnosis/types.ts';
import { useServices } from './services.tsx';
import type { OpenCase } from './use-case.ts';
import { answerOf, wholeSet } from './use-reading-set.ts';

/** A check screen: all its boxes, and why it is asked. */
export interface CheckStep {
  readonly kind: 'check';
  readonly checks: readonly string[];
  readonly procedure: string | undefined;
  readonly ranked: RankedCheck | undefined;
  readonly others: readonly RankedCheck[];
}

export type Step = Exclude<NextStep, { kind: 'check' }> | CheckStep;

/**
 * The step to show now.
 *
 * A reading set that was begun stays on screen until its last box is filled, even though the engine
 * may want something else after the first: the probes are in the hand. It is let go at once when the
 * site changes, because then its instruction may no longer be permitted.
 */
export function useStep(open: OpenCase): Step | undefined {
  const { catalog } = useServices();
  const { view, state } = open;
  const [held, setHeld] = useState<{ step: CheckStep; site: string }>();
  const site = view === undefined ? '' : JSON.stringify(view.site);
  const isBegun =
    held !== undefined && held.site === site && state !== undefined && isUnfinished(held.step, state);
  const now = useMemo(() => (view === undefined ? undefined : stepOf(catalog, view)), [catalog, view]);
  useEffect(() => {
    if (!isBegun && now?.kind === 'check' && now.checks.length > 1) setHeld({ step: now, site });
  }, [isBegun, now, site]);
  return isBegun ? held.step : now;
}

function stepOf(catalog: Catalog, view: CallView): Step {
  const { next } = view;
  if (next.kind !== 'check') return next;
  const ids = next.checks.map((one: CheckView) => one.check);
  return {
    kind: 'check',
    checks: wholeSet(catalog, ids, (check) => view.windows[check] !== undefined),
    procedure: next.procedure,
    ranked: next.ranked,
    others: next.others,
  };
}

/** Some boxes filled and some not. */
function isUnfinished(step: CheckStep, state: NonNullable<OpenCase['state']>): boolean {
  const filled = step.checks.filter((check) => answerOf(state, check, false) !== undefined);
  return filled.length > 0 && filled.length < step.checks.length;
}
