import { type Belief, believe, type Given } from '../belief/believe.ts';
import type { Before } from '../belief/hypotheses.ts';
import { actionWeights, causesOf, suspectsOf } from '../belief/summary.ts';
import { figureOf } from '../judgements.ts';
import type { EvidenceLine, ExpectedWindow, JudgedReading, Suspect, Verdict } from '../types.ts';
import { evidenceFor } from './evidence.ts';
import { type Owed, owedRules } from './rules.ts';

/**
 * May the call end here, and with what?
 *
 * Only this rule ends a call: a repair is named when its probability is past the threshold and no
 * hard rule is owed. When nothing more can be read, the honest endings are left: a group that cannot
 * be told apart, a thing to watch; pulling the pump is never named because nothing better is left.
 */
export interface Deciding {
  readonly belief: Belief;
  readonly answers: readonly Given[];
  readonly before: Before;
  readonly judged: ReadonlyMap<string, JudgedReading>;
  readonly windows: Readonly<Record<string, ExpectedWindow>>;
  applies(check: string): boolean;
}

export interface Decision {
  /** Present when the call may end. */
  readonly verdict: Verdict | undefined;
  /** What stands between the leading repair and its verdict. */
  readonly owed: readonly Owed[];
  readonly surprise: string | undefined;
  /** The leading repair is past its threshold; only owed readings stand in the way. */
  readonly past: boolean;
  /** Short of its threshold, but a pull is what it looks like: the owed readings are worth their minutes. */
  readonly likelyPull: boolean;
}

export function decide(deciding: Deciding, exhausted: boolean): Decision {
  const { belief } = deciding;
  const surprise = takeAgain(deciding);
  const [action, probability] = leadingAction(belief);
  const subject = subjectOf(deciding, action);
  const owed = owedRules(Object.values(belief.model.knowledge.rules), subject);
  const verdict = verdictOf(deciding, { ...subject, probability });
  const past = probability >= threshold(belief, subject.action.pull);
  const pullLikely = figureOf(belief.model.knowledge.judgements, 'stop-thresholds', 'pullLikely');
  const likely = probability >= (subject.action.pull ? pullLikely : 0.5);
  const found = { owed, surprise, past, likelyPull: likely && subject.action.pull };
  if (surprise !== undefined) {
    return { ...found, verdict: { ...verdict, kind: 'contradiction', takeAgain: surprise } };
  }
  if (past && owed.length === 0) return { ...found, verdict };
  if (!exhausted) return { ...found, verdict: undefined };
  return { ...found, verdict: honestEnding(verdict, { past, likely, pull: subject.action.pull, owed }) };
}

function threshold(belief: Belief, pull: boolean): number {
  return figureOf(belief.model.knowledge.judgements, 'stop-thresholds', pull ? 'pull' : 'verdict');
}

function leadingAction(belief: Belief): [string, number] {
  const sums = [...actionWeights(belief.model, belief.weights)];
  return sums.reduce((best, one) => (one[1] > best[1] ? one : best), ['', 0]);
}

function subjectOf(deciding: Deciding, actionId: string) {
  const { knowledge } = deciding.belief.model;
  const action = knowledge.actions[actionId];
  if (action === undefined)
    throw new Error(`verdict: no action ${actionId}; add content/actions/${actionId}.json`);
  const suspects = suspectsOf(deciding.belief).filter((one) => one.action === actionId);
  const evidence = evidenceFor(deciding.belief, actionId, deciding);
  return {
    action,
    suspects,
    faults: leading(suspects).map((one) => one.fault),
    evidence,
    noBuriedRun: deciding.belief.model.system.choices.every(({ input }) => input.buried.length <= 0),
    applies: deciding.applies,
  };
}

const MOST_OF_IT = 0.95;

/** The fewest suspects that together hold nearly all of a group. */
function leading(suspects: readonly Suspect[]): Suspect[] {
  const sum = suspects.reduce((total, one) => total + one.probability, 0);
  const kept: Suspect[] = [];
  let held = 0;
  for (const suspect of suspects) {
    if (held >= MOST_OF_IT * sum) break;
    kept.push(suspect);
    held += suspect.probability;
  }
  return kept;
}

function verdictOf(
  deciding: Deciding,
  subject: ReturnType<typeof subjectOf> & { probability: number },
): Verdict {
  const { knowledge } = deciding.belief.model;
  const faults = leading(subject.suspects);
  const first = faults[0] === undefined ? undefined : knowledge.faults[faults[0].fault];
  const names = new Set(faults.map((one) => one.fault));
  return {
    kind:
      first?.verdict === 'normal'
        ? 'normal'
        : first?.verdict === 'watch'
          ? 'watch'
          : names.size > 1
            ? 'group'
            : 'named',
    verdictClass: first?.verdict ?? 'watch',
    action: subject.action.id,
    faults,
    causes: causesOf(deciding.belief, subject.action.id),
    probability: subject.probability,
    evidence: carrying(subject.evidence),
    owed: [],
    proof: subject.action.proof.flatMap((check) => deciding.windows[check] ?? []),
  };
}

/** The readings that raised the verdict, heaviest first, then those that only ruled rivals out. */
function carrying(evidence: readonly EvidenceLine[]): EvidenceLine[] {
  return [...evidence]
    .filter((line) => line.weight > 0.05 || line.rulesOut.length > 0)
    .sort((one, other) => other.weight - one.weight);
}

/**
 * Nothing more can be read. Pulling is not named below its threshold or with a rule owed: at best it is
 * likely, and what is owed is the first step of the pull.
 */
function honestEnding(
  verdict: Verdict,
  at: { past: boolean; likely: boolean; pull: boolean; owed: readonly Owed[] },
): Verdict {
  const owed = [...new Set(at.owed.map((one) => one.rule))];
  if (at.past && !at.pull) return { ...verdict, kind: owed.length > 0 ? 'group' : verdict.kind, owed };
  if (at.pull) {
    const likely = at.likely && owed.length === 0;
    return likely
      ? { ...verdict, kind: 'group', verdictClass: 'pull-likely', owed }
      : { ...verdict, kind: 'watch', owed };
  }
  return { ...verdict, kind: at.likely ? 'group' : 'watch', owed };
}

/** The reading whose removal restores sense, when some reading is beyond every live piece. */
function takeAgain(deciding: Deciding): string | undefined {
  const { belief, answers, before } = deciding;
  if (!belief.trace.some((line) => line.surprising)) return undefined;
  let best: { check: string; evidence: number } | undefined;
  for (const left of belief.trace) {
    const without = believe(
      belief.model,
      before,
      answers.filter((one) => one.check !== left.check),
    );
    if (without.trace.some((line) => line.surprising)) continue;
    const evidence = without.trace.reduce((sum, line) => sum + line.logEvidence, 0);
    if (best === undefined || evidence > best.evidence) best = { check: left.check, evidence };
  }
  return best?.check ?? belief.trace.find((line) => line.surprising)?.check;
}
