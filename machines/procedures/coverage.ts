import type { Procedure } from './all.ts';
import { stepsOf } from './steps.ts';

/** Where a fault is claimed: by which tree, in which ending, and beside which others. */
export interface Claim {
  readonly procedure: string;
  readonly state: string;
  readonly beside: readonly string[];
}

export interface CoverageRow {
  readonly fault: string;
  readonly claims: readonly Claim[];
}

/**
 * Which tree can end with which fault? One row a fault in the order given, empty where no tree
 * claims it; faults that a tree claims and the list does not hold come last.
 */
export function coverage(procedures: readonly Procedure[], faults: readonly string[]): CoverageRow[] {
  const claims = procedures.flatMap(claimsOf);
  const listed = new Set([...faults, ...claims.map((one) => one.fault)]);
  return [...listed].map((fault) => ({
    fault,
    claims: claims.filter((one) => one.fault === fault).map((one) => one.claim),
  }));
}

function claimsOf({ id, machine }: Procedure): { fault: string; claim: Claim }[] {
  return [...stepsOf(machine).values()].flatMap(({ state, ends }) => {
    const faults = ends?.claims ?? [];
    return faults.map((fault) => ({
      fault,
      claim: { procedure: id, state, beside: faults.filter((other) => other !== fault) },
    }));
  });
}

/** Which trees ask a check; none where it is the planner's own. */
export interface AskRow {
  readonly check: string;
  readonly procedures: readonly string[];
}

/** One row a check in the order given. A fork asks nobody and does not count. */
export function askedBy(procedures: readonly Procedure[], checks: readonly string[]): AskRow[] {
  const asked = procedures.map(({ id, machine }) => ({
    id,
    checks: new Set([...stepsOf(machine).values()].map((step) => step.check)),
  }));
  return checks.map((check) => ({
    check,
    procedures: asked.filter((one) => one.checks.has(check)).map((one) => one.id),
  }));
}
