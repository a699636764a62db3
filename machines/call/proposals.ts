import { figure } from '../../src/diagnosis/judgements.ts';
import type { Knowledge } from '../../src/diagnosis/knowledge.ts';
import type { Proposal } from '../../src/diagnosis/planner/rank.ts';
import type { Check } from '../../src/schema/check.ts';
import type { SiteStepView } from './types.ts';

/**
 * What may be asked next: the checks that trees propose and those that no tree holds, each with the
 * site steps it still needs. A check that the interlock cannot allow is no proposal.
 */
export interface Candidate {
  readonly proposal: Proposal;
  readonly steps: readonly SiteStepView[];
}

export interface ProposalInput {
  readonly knowledge: Knowledge;
  /** Checks that exist here and can be done with the kit at hand. */
  readonly possible: readonly Check[];
  /** What each procedure proposes now, by procedure. */
  readonly proposed: readonly { readonly procedure: string; readonly check: string }[];
  /** Checks that some procedure asks; the others are the planner's own. */
  readonly held: ReadonlySet<string>;
  isAnswered(check: string): boolean;
  /** Missing steps in the safe order, or nothing where nobody present may do it. */
  stepsTo(check: Check): readonly SiteStepView[] | undefined;
}

export function candidatesOf(input: ProposalInput): Candidate[] {
  const byId = new Map(input.possible.map((check) => [check.id, check]));
  const fromTrees = input.proposed.map(({ procedure, check }) => ({ procedure, check: byId.get(check) }));
  const own = input.possible
    .filter((check) => !input.held.has(check.id) && !('sumTest' in check.predict))
    .map((check) => ({ procedure: undefined, check }));
  const seen = new Set<string>();
  return [...fromTrees, ...own].flatMap(({ procedure, check }) => {
    if (check === undefined || input.isAnswered(check.id) || !isDue(check, input)) return [];
    const key = check.set ?? check.id;
    if (seen.has(key)) return [];
    seen.add(key);
    return candidate(input, check, procedure);
  });
}

/** Readings that must stand first do: an ohm reading before any stall test. */
function isDue(check: Check, input: ProposalInput): boolean {
  return (check.after ?? []).every((first) => {
    const members = input.possible.filter((one) => one.id === first || one.set === first);
    return members.every((one) => input.isAnswered(one.id));
  });
}

function candidate(input: ProposalInput, check: Check, procedure: string | undefined): Candidate[] {
  const steps = input.stepsTo(check);
  if (steps === undefined) return [];
  const members = check.set === undefined ? [check] : input.possible.filter((one) => one.set === check.set && !input.isAnswered(one.id));
  const waiting = figure(input.knowledge.judgements, 'waiting-rate');
  const minutes =
    steps.reduce((sum, step) => sum + step.minutes, 0) +
    members.reduce((sum, one) => sum + one.minutes.hands + waiting * one.minutes.wait, 0);
  return [{ proposal: { checks: members.map((one) => one.id), minutes, procedure }, steps }];
}
