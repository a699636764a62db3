import type { NextStep } from '../../../machines/call/types.ts';
import type { Catalog } from '../../catalog/catalog.ts';
import type { Verdict } from '../../diagnosis/types.ts';
import type { Truth } from './truth.ts';

/**
 * Was the end of a search right?
 *
 * A verdict is right when its repair is the repair of what is really wrong. It advises when it names a
 * fault, a group with one repair, or says that nothing is wrong; a fault whose own class is "watch" is
 * named by that. Everything else ("watch, for want of better", a contradiction, a referral) advises
 * nothing and counts as not found.
 */
export interface Ended {
  readonly kind: string;
  readonly action: string;
  readonly probability: number;
  readonly faults: readonly string[];
  /** Hard rules not met although it was said. */
  readonly owed: readonly string[];
  readonly advises: boolean;
  /** The repair that leads is the one that helps, advised or not. */
  readonly isRight: boolean;
  readonly found: boolean;
  /** Advises to pull a pump that is sound. */
  readonly wrongPull: boolean;
}

export function judgeEnd(catalog: Catalog, next: NextStep, truth: Truth): Ended {
  if (next.kind !== 'verdict') return endedWithout(next.kind);
  const { verdict } = next;
  const advises = isAdvice(verdict);
  const isRight = verdict.action === truth.hypothesis.action;
  const pulls = (action: string): boolean => catalog.actions[action]?.pull === true;
  return {
    kind: verdict.kind,
    action: verdict.action,
    probability: verdict.probability,
    faults: verdict.faults.map((one) => one.fault),
    owed: verdict.owed,
    advises,
    isRight,
    found: advises && isRight,
    wrongPull: advises && pulls(verdict.action) && !pulls(truth.hypothesis.action),
  };
}

function isAdvice({ kind, verdictClass, probability }: Verdict): boolean {
  if (kind === 'named' || kind === 'group' || kind === 'normal') return true;
  return kind === 'watch' && verdictClass === 'watch' && probability >= 0.5;
}

const endedWithout = (kind: string): Ended => ({
  kind,
  action: '',
  probability: 0,
  faults: [],
  owed: [],
  advises: false,
  isRight: false,
  found: false,
  wrongPull: false,
});
