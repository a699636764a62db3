import { figure, type Judgements } from '../../src/diagnosis/judgements.ts';
import { previewOutcomes } from '../../src/diagnosis/planner/preview.ts';
import { type RankedProposal, rank } from '../../src/diagnosis/planner/rank.ts';
import type { RankedCheck, Verdict } from '../../src/diagnosis/types.ts';
import { type Decision, decide } from '../../src/diagnosis/verdict/decide.ts';
import type { Person } from '../../src/schema/basics.ts';
import type { Check } from '../../src/schema/check.ts';
import type { Candidate } from './proposals.ts';
import type { Readings } from './readings.ts';
import type { CheckView, NextStep } from './types.ts';

/**
 * What comes next: one more reading, or the end of the search.
 *
 * The planner chooses among what the trees propose and the interlock permits; it stays in the
 * procedure on screen unless another proposal is clearly worth more. Readings that a hard rule still
 * owes to a verdict that is otherwise certain come first. Only the verdict rule ends the call.
 */
export interface Choosing {
  readonly readings: Readings;
  /** Who will take the next reading. */
  readonly by: Person;
  /** What trees propose once they go past the checks in `passed`, and what no tree holds. */
  candidates(passed: ReadonlySet<string>): readonly Candidate[];
  /** Every check that is possible, held by a tree or not. */
  everything(): readonly Candidate[];
  /** The same for a qualified person: what would go on if one were there. */
  ifQualified(): readonly Candidate[];
  /** The supply is locked: going live means closing up and coming back. */
  readonly isDeadNow: boolean;
  /** Procedure that asked the last reading. */
  readonly procedure: string | undefined;
  /** Check that the person would rather take now; the interlock still leads the way to it. */
  readonly asked: string | undefined;
  readonly checks: readonly Check[];
  applies(check: string): boolean;
}

export interface Chosen {
  readonly next: NextStep;
  readonly decision: Decision;
}

export function chooseNext(choosing: Choosing): Chosen {
  const deciding = { ...choosing.readings, applies: choosing.applies };
  const decision = decide(deciding, false);
  if (decision.verdict !== undefined)
    return { next: { kind: 'verdict', verdict: decision.verdict }, decision };
  const step =
    askedStep(choosing) ??
    fromTrees(choosing, decision) ??
    bestStep(choosing, decision, choosing.everything()) ??
    owedToPull(choosing, decision);
  if (step !== undefined) return { next: step, decision };
  const ending = decide(deciding, true);
  if (ending.verdict === undefined)
    throw new Error('call: an exhausted search gave no ending; decide must end it');
  const verdict = mustRefer(choosing, ending.verdict)
    ? { ...ending.verdict, kind: 'refer' as const }
    : ending.verdict;
  return { next: { kind: 'verdict', verdict }, decision: ending };
}

/** The check that was asked for, as long as it is possible and unanswered. */
function askedStep(choosing: Choosing): NextStep | undefined {
  const { asked } = choosing;
  if (asked === undefined) return undefined;
  const candidates = choosing.everything();
  const ranked = rank(
    choosing.readings.belief,
    candidates.map((one) => one.proposal),
    choosing.by,
  );
  const best = ranked.find((one) => one.checks.includes(asked));
  return best === undefined ? undefined : asStep(choosing, { candidates, best, others: ranked });
}

/** The search ended only because nobody present may take what would tell more. */
function mustRefer(choosing: Choosing, verdict: Verdict): boolean {
  if (verdict.kind !== 'watch' && verdict.kind !== 'group') return false;
  const { belief } = choosing.readings;
  const ranked = rank(
    belief,
    choosing.ifQualified().map((one) => one.proposal),
    'qualified',
  );
  return ranked.some((one) => isUseful(belief.model.knowledge.judgements, one));
}

/** Nothing tells more and it looks like a pull: what the hard rules owe is read before it is said. */
function owedToPull(choosing: Choosing, decision: Decision): NextStep | undefined {
  if (!decision.likelyPull || decision.owed.length === 0) return undefined;
  const candidates = choosing.everything();
  const ranked = rank(
    choosing.readings.belief,
    candidates.map((one) => one.proposal),
    choosing.by,
  );
  const owed = firstOwed(decision, ranked);
  return owed === undefined ? undefined : asStep(choosing, { candidates, best: owed, others: [] });
}

/** Trees go past checks that tell nothing until one proposes something worth its minutes. */
function fromTrees(choosing: Choosing, decision: Decision): NextStep | undefined {
  const passed = new Set<string>();
  for (;;) {
    const candidates = choosing.candidates(passed);
    const step = bestStep(choosing, decision, candidates);
    const fresh = candidates
      .flatMap(({ proposal }) => (proposal.procedure === undefined ? [] : proposal.checks))
      .filter((check) => !passed.has(check));
    if (step !== undefined || fresh.length === 0) return step;
    for (const check of fresh) passed.add(check);
  }
}

/** The best reading still worth taking among these; with a repair past its threshold, one that is owed to it. */
function bestStep(
  choosing: Choosing,
  decision: Decision,
  candidates: readonly Candidate[],
): NextStep | undefined {
  const { belief } = choosing.readings;
  const { judgements, checks } = belief.model.knowledge;
  const ranked = rank(
    belief,
    candidates.map((one) => one.proposal),
    choosing.by,
  );
  const useful = ranked.filter((one) => isUseful(judgements, one));
  if (decision.past) {
    const owed = firstOwed(decision, ranked);
    return owed === undefined ? undefined : asStep(choosing, { candidates, best: owed, others: useful });
  }
  const isLive = (one: RankedProposal): boolean => checks[one.checks[0] ?? '']?.site.supply === 'live';
  const best = deadFirst(useful, stay(useful, choosing.procedure, figure(judgements, 'stay-factor')), {
    isLive,
    share: figure(judgements, choosing.isDeadNow ? 'dead-round-preference' : 'dead-preference'),
  });
  return best === undefined ? undefined : asStep(choosing, { candidates, best, others: useful });
}

/** It moves belief at all, and enough for its minutes. */
const isUseful = (judgements: Judgements, one: RankedProposal): boolean =>
  one.gain >= figure(judgements, 'least-gain') &&
  one.perMinute >= figure(judgements, 'least-gain-per-minute');

/** A dead check that is nearly worth as much as the live one is taken instead. */
function deadFirst(
  ranked: readonly RankedProposal[],
  best: RankedProposal | undefined,
  rule: { isLive(one: RankedProposal): boolean; share: number },
): RankedProposal | undefined {
  if (best === undefined || !rule.isLive(best)) return best;
  return ranked.find((one) => !rule.isLive(one) && one.perMinute >= rule.share * best.perMinute) ?? best;
}

/** With a repair past its threshold, the cheapest reading that a hard rule still owes it. */
function firstOwed(decision: Decision, ranked: readonly RankedProposal[]): RankedProposal | undefined {
  const wanted = new Set(decision.owed.flatMap((one) => one.checks));
  return ranked
    .filter((one) => [...one.checks, ...(one.leadsTo ?? [])].some((check) => wanted.has(check)))
    .sort((one, other) => one.minutes - other.minutes)[0];
}

function stay(
  ranked: readonly RankedProposal[],
  procedure: string | undefined,
  factor: number,
): RankedProposal | undefined {
  const [best] = ranked;
  const same = procedure === undefined ? undefined : ranked.find((one) => one.procedure === procedure);
  if (best === undefined || same === undefined) return best;
  return best.perMinute > factor * same.perMinute ? best : same;
}

interface Best {
  readonly candidates: readonly Candidate[];
  readonly best: RankedProposal;
  readonly others: readonly RankedProposal[];
}

function asStep(choosing: Choosing, { candidates, best, others }: Best): NextStep {
  const { steps } = candidates.find((one) => one.proposal.checks === best.checks) ?? { steps: [] };
  const ranked = describe(choosing, best, true);
  const beside = others
    .filter((one) => one.checks !== best.checks)
    .slice(0, OTHERS)
    .map((one) => describe(choosing, one, false));
  if (steps.length > 0) return { kind: 'site-steps', steps, towards: best.checks, ranked, others: beside };
  return {
    kind: 'check',
    checks: best.checks.map((check) => viewOf(choosing.readings, check)),
    procedure: best.procedure,
    ranked,
    others: beside,
  };
}

const OTHERS = 4;

export function viewOf(readings: Readings, check: string): CheckView {
  const window = readings.windows[check];
  if (window === undefined)
    throw new Error(`call: no window for ${check}; only checks of this installation are asked`);
  return { check, window };
}

function describe({ readings, by }: Choosing, one: RankedProposal, withOutcomes: boolean): RankedCheck {
  const { checks, gain, minutes, perMinute } = one;
  const window = readings.windows[checks[0] ?? ''];
  const outcomes = withOutcomes && window !== undefined ? previewOutcomes(readings.belief, window, by) : [];
  return { checks, gain, minutes, perMinute, outcomes };
}
