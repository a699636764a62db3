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
  /** Checks that exist on this installation. */
  readonly here: readonly Check[];
  /** Those that can be done with the kit at hand, by somebody present. */
  readonly possible: readonly Check[];
  /** What each procedure proposes now, by procedure. */
  readonly proposed: readonly { readonly procedure: string; readonly check: string }[];
  /** Checks that some procedure asks; the others are the planner's own. */
  readonly held: ReadonlySet<string>;
  /** The supply is locked: dead readings that need no further step are at hand. */
  readonly isDeadNow: boolean;
  isAnswered(check: string): boolean;
  /** Answered with a reading, not with "could not take it". */
  isRead(check: string): boolean;
  outcomeOf(check: string): string | undefined;
  /** Missing steps in the safe order, or nothing where nobody present may do it. */
  stepsTo(check: Check): readonly SiteStepView[] | undefined;
}

/** Those of the trees and the planner's own; `everything` hears every possible check, held by a tree or not. */
export function candidatesOf(input: ProposalInput, everything: boolean): Candidate[] {
  const byId = new Map(input.possible.map((check) => [check.id, check]));
  const fromTrees = input.proposed.map(({ procedure, check }) => ({ procedure, check: byId.get(check) }));
  const own = input.possible
    .filter((check) => everything || !input.held.has(check.id) || isCheapDead(input, check))
    .map((check) => ({ procedure: undefined, check }));
  const seen = new Set<string>();
  return [...fromTrees, ...own].flatMap(({ procedure, check }) => {
    if (check === undefined || 'sumTest' in check.predict || input.isAnswered(check.id)) return [];
    const key = check.set ?? check.id;
    if (seen.has(key)) return [];
    seen.add(key);
    return candidate(input, check, procedure);
  });
}

/** One dead round takes all the cheap dead readings before power comes back. */
function isCheapDead(input: ProposalInput, check: Check): boolean {
  return input.isDeadNow && check.site.supply === 'locked' && input.stepsTo(check)?.length === 0;
}

/**
 * A check whose forerunners are not read yet stands for the first of them: it is worth what it leads
 * to, and costs both.
 */
function candidate(input: ProposalInput, wanted: Check, procedure: string | undefined): Candidate[] {
  const first = firstDue(input, wanted, new Set());
  const steps = first === undefined ? undefined : input.stepsTo(first);
  if (first === undefined || steps === undefined) return [];
  const checks = membersOf(input, first);
  const leadsTo = first === wanted ? undefined : membersOf(input, wanted);
  const minutes =
    steps.reduce((sum, step) => sum + step.minutes, 0) +
    handsAndWaiting(input, checks) +
    (leadsTo === undefined ? 0 : handsAndWaiting(input, leadsTo));
  const ids = checks.map((one) => one.id);
  const proposal = { checks: ids, minutes, procedure };
  return [
    {
      proposal: leadsTo === undefined ? proposal : { ...proposal, leadsTo: leadsTo.map((one) => one.id) },
      steps,
    },
  ];
}

/**
 * The check itself, or the first of those that must stand before it: an ohm reading before any stall
 * test. Where one of them could not be taken the check is no candidate.
 */
function firstDue(input: ProposalInput, check: Check, passed: Set<string>): Check | undefined {
  if (passed.has(check.id)) return undefined;
  passed.add(check.id);
  const before = forerunners(input, check).filter((one) => !input.isRead(one.id));
  if (before.some((one) => input.isAnswered(one.id) || !input.possible.includes(one))) return undefined;
  const [first] = before;
  return first === undefined ? check : firstDue(input, first, passed);
}

/** Checks of this installation that must stand before another, by id or by set. */
function forerunners(input: ProposalInput, check: Check): Check[] {
  const names = (check.after ?? []).flatMap((one) => {
    if (typeof one === 'string') return [one];
    const outcome = input.outcomeOf(one.seen.check);
    return outcome !== undefined && one.seen.answers.includes(outcome) ? one.checks : [];
  });
  return names.flatMap((name) => input.here.filter((one) => one.id === name || one.set === name));
}

function membersOf(input: ProposalInput, check: Check): Check[] {
  return check.set === undefined
    ? [check]
    : input.possible.filter((one) => one.set === check.set && !input.isAnswered(one.id));
}

function handsAndWaiting(input: ProposalInput, checks: readonly Check[]): number {
  const waiting = figure(input.knowledge.judgements, 'waiting-rate');
  return checks.reduce((sum, { minutes }) => sum + minutes.hands + waiting * minutes.wait, 0);
}
