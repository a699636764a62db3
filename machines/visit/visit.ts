import { initialTransition, type SnapshotFrom, transition } from 'xstate';
import { VISIT_EVENTS, type VisitEvent, visitMachine } from './visit.machine.ts';

/**
 * Where a visit stands, worked out anew from what was said: nothing of it is stored.
 *
 * @param said  facts in the order said, withdrawn ones left out
 * @param site  what the work site owes now; a visit cannot be closed over a due disinfection
 */
export function foldVisit(said: readonly { readonly type: string }[], site: OwedBySite): VisitView {
  const input = { disinfectionDue: !mayClose(site) };
  let [snapshot] = initialTransition(visitMachine, input);
  const facts: Facts = { isRepaired: false, failedRepairs: 0, ignored: [], saidUnknown: new Set() };
  for (const { type } of said) {
    if (type.endsWith(UNKNOWN)) facts.saidUnknown.add(type.slice(0, -UNKNOWN.length));
    if (!isVisitEvent(type)) continue;
    if (snapshot.can({ type })) {
      [snapshot] = transition(visitMachine, snapshot, { type });
      note(facts, type, snapshot);
    } else facts.ignored.push(type);
  }
  return viewOf(snapshot, facts);
}

/** A visit that opened the well is not closed before the well is disinfected. */
export const mayClose = (site: OwedBySite): boolean => site.disinfection !== 'due';

export interface OwedBySite {
  readonly disinfection: 'none' | 'due' | 'done';
}

export type VisitStage =
  | 'arrive'
  | 'story'
  | 'identify'
  | 'diagnose'
  | 'explain'
  | 'repair'
  | 'prove'
  | 'rootCause'
  | 'disinfect'
  | 'handBack'
  | 'interrupted'
  | 'handedOver'
  | 'stopped'
  | 'closed';

export interface VisitView {
  readonly stage: VisitStage;
  /** A repair was made and has not been found useless since. */
  readonly isRepaired: boolean;
  readonly isClosed: boolean;
  /** All is said that closes a visit but for the well, which is still to be disinfected. */
  readonly owesDisinfection: boolean;
  readonly failedRepairs: number;
  /** Facts of the installation said to be unknown: `family` by an event `family-unknown`, and so on. */
  readonly saidUnknown: ReadonlySet<string>;
  /** What may be said now. */
  readonly choices: readonly VisitEvent[];
  /** Facts that came where they mean nothing; kept in the trail, without effect. */
  readonly ignored: readonly VisitEvent[];
}

const UNKNOWN = '-unknown';

const BEFORE_REPAIR: ReadonlySet<VisitStage> = new Set([
  'arrive',
  'story',
  'identify',
  'diagnose',
  'explain',
  'repair',
]);

type Snapshot = SnapshotFrom<typeof visitMachine>;

interface Facts {
  isRepaired: boolean;
  failedRepairs: number;
  readonly ignored: VisitEvent[];
  readonly saidUnknown: Set<string>;
}

const isVisitEvent = (type: string): type is VisitEvent => VISIT_EVENTS.some((one) => one === type);

function note(facts: Facts, type: VisitEvent, after: Snapshot): void {
  if (type === 'repaired') facts.isRepaired = true;
  if (type === 'repair-did-not-help') facts.failedRepairs++;
  if (BEFORE_REPAIR.has(stageOf(after))) facts.isRepaired = false;
}

function viewOf(snapshot: Snapshot, facts: Facts): VisitView {
  const stage = stageOf(snapshot);
  return {
    ...facts,
    stage,
    isClosed: stage === 'closed',
    owesDisinfection: stage === 'disinfect',
    choices: VISIT_EVENTS.filter((type) => snapshot.can({ type })),
  };
}

/** Name of the innermost state. */
function stageOf({ value }: Snapshot): VisitStage {
  if (typeof value === 'string') return value;
  const { onSite } = value;
  return 'finding' in onSite ? onSite.finding : onSite.acting;
}
