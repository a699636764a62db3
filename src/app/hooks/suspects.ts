import type { CallView } from '../../../machines/call/types.ts';
import type { Suspect } from '../../diagnosis/types.ts';

/**
 * Suspects as they are listed: those that stand, bound together where one repair serves them, and
 * those that a reading has ruled out.
 */
export interface SuspectGroup {
  /** The repair that serves all of them. */
  readonly action: string;
  readonly suspects: readonly Suspect[];
}

export interface Listed {
  readonly groups: readonly SuspectGroup[];
  readonly ruledOut: readonly Suspect[];
}

/** Below this a suspect is no longer listed as standing. */
const LEAST = 0.005;

/** @returns groups in the order of their likeliest suspect; nothing that no reading has touched is lost */
export function listSuspects(view: CallView): Listed {
  const ruledOut = view.suspects.filter((one) => one.ruledOutBy !== undefined);
  const standing = view.suspects.filter((one) => one.ruledOutBy === undefined && one.probability >= LEAST);
  const actions = [...new Set(standing.map((one) => one.action))];
  return {
    groups: actions.map((action) => ({ action, suspects: standing.filter((one) => one.action === action) })),
    ruledOut,
  };
}

/** Faults that one of these readings put out of the running. */
export function ruledOutBy(view: CallView, checks: readonly string[]): string[] {
  const faults = view.suspects.filter(
    (one) => one.ruledOutBy !== undefined && checks.includes(one.ruledOutBy),
  );
  return [...new Set(faults.map((one) => one.fault))];
}

/** Faults of which no variant stands any more, each with the readings that ruled its variants out. */
export function ruledOutFaults(view: CallView): { fault: string; checks: string[] }[] {
  const { groups, ruledOut } = listSuspects(view);
  const standing = new Set(groups.flatMap((group) => group.suspects).map((one) => one.fault));
  const faults = [...new Set(ruledOut.map((one) => one.fault))].filter((fault) => !standing.has(fault));
  return faults.map((fault) => ({
    fault,
    checks: [
      ...new Set(
        ruledOut.flatMap((one) =>
          one.fault === fault && one.ruledOutBy !== undefined ? one.ruledOutBy : [],
        ),
      ),
    ],
  }));
}

const LEADERS = 3;

/** The few that stand in front. */
export function leadersOf(view: CallView): readonly Suspect[] {
  return listSuspects(view)
    .groups.flatMap((group) => group.suspects)
    .sort((one, other) => other.probability - one.probability)
    .slice(0, LEADERS);
}

/** The faults that a bracket holds because they cannot be told apart from here. */
export function cannotBeToldApart(view: CallView): readonly string[] {
  const { next } = view;
  return next.kind === 'verdict' && next.verdict.kind === 'group'
    ? next.verdict.faults.map((one) => one.fault)
    : [];
}
