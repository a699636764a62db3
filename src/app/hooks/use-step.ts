import { useEffect, useMemo, useState } from 'react';
import type { CallView, CheckView, NextStep, SiteView } from '../../../machines/call/types.ts';
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
 * The step to show now; nothing while the engine works, because the old step may no longer be permitted.
 *
 * A reading set that was begun stays on screen until its last box is filled, even though the engine
 * may want something else after the first: the probes are in the hand. It is let go at once when the
 * site changes.
 */
export function useStep(open: OpenCase): Step | undefined {
  const { catalog } = useServices();
  const { view, state, waiting } = open;
  const [held, setHeld] = useState<{ step: CheckStep; site: string }>();
  const site = view === undefined ? '' : siteKey(view.site);
  const now = useMemo(() => (view === undefined ? undefined : stepOf(catalog, view)), [catalog, view]);
  const filled =
    held === undefined || state === undefined || held.site !== site ? undefined : filledOf(held.step, state);
  const isBegun =
    held !== undefined && filled !== undefined && filled > 0 && filled < held.step.checks.length;
  useEffect(() => {
    if (!isBegun && !waiting)
      setHeld(now?.kind === 'check' && now.checks.length > 1 ? { step: now, site } : undefined);
  }, [isBegun, waiting, now, site]);
  if (isBegun) return held.step;
  if (!waiting) return now;
  return held !== undefined && filled === 0 ? held.step : undefined;
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

/** All that is true of the site; what the strip says of one place follows from the step. */
const siteKey = ({ here: _here, word: _word, ...site }: SiteView): string => JSON.stringify(site);

function filledOf(step: CheckStep, state: NonNullable<OpenCase['state']>): number {
  return step.checks.filter((check) => answerOf(state, check, false) !== undefined).length;
}
