import type { Catalog } from '../../src/catalog/catalog.ts';
import { suspectsOf } from '../../src/diagnosis/belief/summary.ts';
import { decide } from '../../src/diagnosis/verdict/decide.ts';
import type { Place } from '../../src/schema/basics.ts';
import type { CaseState } from '../../src/schema/case-state.ts';
import type { Check } from '../../src/schema/check.ts';
import { HELD_CHECKS, PROCEDURES } from '../procedures/all.ts';
import { passingOver, proposals } from '../procedures/fold.ts';
import { stepsOf } from '../procedures/steps.ts';
import { foldVisit, type VisitView } from '../visit/visit.ts';
import { safeState } from '../worksite/safe-state.ts';
import { foldSite, siteView } from '../worksite/site.ts';
import { missingSteps, owedBeforeClosing } from '../worksite/steps.ts';
import { type Work, workPlace } from '../worksite/work.ts';
import { checksOn, isAtHand } from './applies.ts';
import { askInstallation } from './ask-installation.ts';
import { isRead, readingFacts } from './facts.ts';
import { modelFor } from './models.ts';
import { type Chosen, chooseNext, viewOf } from './next-step.ts';
import { proofStep } from './proof.ts';
import { candidatesOf, type ProposalInput } from './proposals.ts';
import { type Readings, readingsOf } from './readings.ts';
import { repairStep } from './repair.ts';
import type { CallView, NextStep, ProposedBy } from './types.ts';

/**
 * The whole call after any event: from the case as it stands to what a screen shows.
 *
 * Pure but for the models it keeps between calls; the same case gives the same view everywhere. This
 * is the one place that sees trees, interlock, planner and belief together, and it decides nothing
 * that they do not.
 *
 * @param proposedBy who proposes: on screen the trees do; the sweep asks what the planner alone would do
 */
export function viewCall(catalog: Catalog, state: CaseState, proposedBy: ProposedBy = 'trees'): CallView {
  const call = open(catalog, state, proposedBy);
  const next = nextOf(call);
  const decided = next.decision;
  return {
    contentVersion: catalog.version,
    visit: call.visit.stage,
    site: siteView(call.work.site, placeOf(catalog, next.next) ?? lastPlace(call), call.work.holdsCapacitor),
    next: next.next,
    suspects: suspectsOf(call.readings.belief),
    judged: [...call.readings.judged.values()],
    windows: call.readings.windows,
    trail: state.trail,
    surprise: decided?.surprise,
    assumed: call.readings.belief.model.system.assumed,
  };
}

/** Everything about a call that is worked out once for a view. */
export interface OpenCall {
  readonly catalog: Catalog;
  readonly state: CaseState;
  readonly checks: readonly Check[];
  readonly readings: Readings;
  readonly work: Work;
  readonly visit: VisitView;
  readonly proposedBy: ProposedBy;
  applies(check: string): boolean;
  minutesOf(step: string): number;
}

function open(catalog: Catalog, state: CaseState, proposedBy: ProposedBy): OpenCall {
  const model = modelFor(catalog, state.installation, state.meter);
  const checks = checksOn(model.system, Object.values(catalog.checks));
  const ids = new Set(checks.map((check) => check.id));
  const readings = readingsOf(model, checks, state);
  const said = state.siteEvents.map((one) => one.said);
  const { events, breakerTripped, ...flags } = readingFacts(checks, readings);
  const isBackOn = said.some(({ type }) => type === 'reset-breaker');
  const site = foldSite([...said, ...events]);
  const boxes = model.system.choices.map((choice) => choice.box);
  return {
    catalog,
    state,
    checks,
    readings,
    proposedBy,
    visit: foldVisit(state.visitEvents, site),
    work: {
      ...workPlace(catalog, boxes, state.installation),
      ...flags,
      breakerTripped: breakerTripped && !isBackOn,
      site,
      who: state.person,
    },
    applies: (check) => ids.has(check),
    minutesOf: (step) => catalog.siteSteps[step]?.minutes ?? 0,
  };
}

function nextOf(call: OpenCall): { next: NextStep; decision?: Chosen['decision'] } {
  const { work, state } = call;
  if (work.site.stopped) return { next: { kind: 'stopped', safeState: safeState(work.site, state.person) } };
  if (call.checks.length === 0) return { next: { kind: 'not-this-tool', exit: 'no-such-installation' } };
  if (call.visit.isClosed) return closed(call);
  const question = askInstallation(call);
  if (question !== undefined) return { next: question };
  const opening = openingCheck(call);
  if (opening !== undefined) return { next: opening };
  const chosen = choose(call);
  if (chosen.next.kind !== 'verdict') return chosen;
  const { verdict } = chosen.next;
  return { ...chosen, next: repairStep(call, verdict) ?? proofStep(call, verdict) ?? chosen.next };
}

/** A closed visit asks nothing more, whatever it ended with. */
function closed(call: OpenCall): { next: NextStep; decision: Chosen['decision'] } {
  const { readings } = call;
  const decision = decide({ ...readings, applies: call.applies }, true);
  if (decision.verdict === undefined) throw new Error('call: an exhausted search gave no ending');
  const owed = owedBeforeClosing(call.work.site);
  return { next: { kind: 'closed', verdict: decision.verdict, owed }, decision };
}

function choose(call: OpenCall): Chosen {
  const { readings, state } = call;
  const byTrees = call.proposedBy === 'trees';
  return chooseNext({
    readings,
    by: state.person,
    candidates: (passed) => candidatesOf(proposalInput(call, passed), !byTrees),
    everything: () => candidatesOf(proposalInput(call, new Set()), true),
    ifQualified: () =>
      candidatesOf(proposalInput({ ...call, work: { ...call.work, who: 'qualified' } }, new Set()), true),
    isDeadNow: call.work.site.supply === 'locked',
    procedure: byTrees ? lastProcedure(call) : undefined,
    asked: askedFor(call),
    checks: call.checks,
    applies: call.applies,
  });
}

/** What may be proposed; trees go past checks that nobody here can do and those in `passed`. */
function proposalInput(call: OpenCall, passed: ReadonlySet<string>): ProposalInput {
  const { catalog, readings, state, work } = call;
  const senses = new Set(
    Object.values(catalog.instruments)
      .filter((one) => one.kind === 'senses')
      .map((one) => one.id),
  );
  const kit = { instruments: state.instruments, meter: state.meter, senses };
  const stepsTo = (check: Check) => {
    const way = missingSteps(check, work, call.minutesOf);
    return way.possible ? way.steps : undefined;
  };
  const possible = call.checks.filter((check) => isAtHand(check, kit) && stepsTo(check) !== undefined);
  const can = new Set(possible.map((check) => check.id));
  const blocked = new Set([...passed, ...call.checks.map((check) => check.id).filter((id) => !can.has(id))]);
  const answers = { outcomeOf: readings.outcomeOf, applies: call.applies };
  return {
    knowledge: catalog,
    here: call.checks,
    possible,
    proposed: call.proposedBy === 'trees' ? proposals(PROCEDURES, passingOver(answers, blocked)) : [],
    held: HELD_CHECKS,
    isDeadNow: work.site.supply === 'locked',
    isAnswered: (check) => readings.outcomeOf(check) !== undefined,
    isRead: (check) => isRead(readings.outcomeOf(check)),
    outcomeOf: readings.outcomeOf,
    stepsTo,
  };
}

/** The first question of every call: which state is the system in? */
function openingCheck(call: OpenCall): NextStep | undefined {
  const first = call.checks.find((check) => 'rule' in check.predict && check.predict.rule === 'what-is-seen');
  if (first === undefined || call.readings.outcomeOf(first.id) !== undefined) return undefined;
  return {
    kind: 'check',
    checks: [viewOf(call.readings, first.id)],
    procedure: undefined,
    ranked: undefined,
    others: [],
  };
}

const ASKED_FOR = 'asked-for.';

/** The check that a person last asked for by name: a visit event `asked-for.ohms-two-wire`. */
function askedFor({ state }: OpenCall): string | undefined {
  return state.visitEvents.findLast(({ type }) => type.startsWith(ASKED_FOR))?.type.slice(ASKED_FOR.length);
}

/** The procedure that the last standing reading belongs to. */
function lastProcedure(call: OpenCall): string | undefined {
  const last = call.state.answers.at(-1)?.check;
  if (last === undefined) return undefined;
  return PROCEDURES.find(({ machine }) => [...stepsOf(machine).values()].some((step) => step.check === last))
    ?.id;
}

function placeOf(catalog: Catalog, next: NextStep): Place | undefined {
  if (next.kind === 'site-steps')
    return next.steps[0]?.place ?? catalog.checks[next.towards[0] ?? '']?.site.place;
  if (next.kind === 'check') return catalog.checks[next.checks[0]?.check ?? '']?.site.place;
  if (next.kind === 'repair') return next.steps[0]?.place ?? catalog.actions[next.verdict.action]?.place;
  if (next.kind === 'proof') return catalog.checks[next.check?.check ?? '']?.site.place;
  return undefined;
}

/** Where the last reading was taken: what the strip speaks of while the next step has no place. */
function lastPlace({ catalog, state }: OpenCall): Place | undefined {
  return state.answers
    .map(({ check }) => catalog.checks[check]?.site.place)
    .findLast((place) => place !== undefined);
}
