import type { Outcome } from '../../src/diagnosis/types.ts';
import { FIRST_QUESTION, type Procedure } from './all.ts';
import type { Ending, Tree } from './ask.ts';
import { HERE, NOT_HERE } from './outcomes.ts';
import { type Step, startOf, stepsOf } from './steps.ts';

/**
 * Where does a procedure stand, given the answers that stand now?
 *
 * The place is never stored: it is walked anew from the beginning each time, so undo, correction,
 * import and hand-over need nothing. A procedure proposes exactly one check, the first that it
 * cannot answer; one that has ended proposes none.
 */
export interface Answers {
  /** What the reading that stands amounts to; undefined while there is none. */
  outcomeOf(check: string): Outcome | undefined;
  /** Does the check exist on this installation? */
  applies(check: string): boolean;
}

export interface PathStep {
  readonly state: string;
  readonly check: string;
  readonly outcome: Outcome;
}

export interface Place {
  /** The state it stands in. */
  readonly at: string;
  readonly proposes: string | undefined;
  readonly ends: Ending | undefined;
  /** The states left behind, oldest first, each with the outcome that led on. */
  readonly path: readonly PathStep[];
}

export function foldProcedure(machine: Tree, answers: Answers): Place {
  const steps = stepsOf(machine);
  const path: PathStep[] = [];
  let step = stepAt(steps, startOf(machine));
  while (path.length < steps.size) {
    const said = outcomeAt(step, answers);
    if (said === undefined) break;
    path.push({ state: step.state, ...said });
    step = stepAt(steps, wayOn(step, said.outcome));
  }
  return { at: step.state, proposes: step.check, ends: step.ends, path };
}

/** What leads on from a state; nothing where it must be asked first, or ends. */
function outcomeAt({ check, fork }: Step, answers: Answers): Pick<PathStep, 'check' | 'outcome'> | undefined {
  if (fork !== undefined) return { check: fork, outcome: answers.applies(fork) ? HERE : NOT_HERE };
  if (check === undefined) return undefined;
  const outcome = answers.applies(check) ? answers.outcomeOf(check) : NOT_HERE;
  return outcome === undefined ? undefined : { check, outcome };
}

/** An answer that the tree does not know (a case from other content) is as good as none. */
function wayOn(step: Step, outcome: Outcome): string {
  return step.ways.get(outcome) ?? step.ways.get('not-taken') ?? step.state;
}

function stepAt(steps: ReadonlyMap<string, Step>, state: string): Step {
  const step = steps.get(state);
  if (step === undefined) throw new Error(`procedures: no state ${state}; name a state of the same tree`);
  return step;
}

/** One check, asked by one procedure. */
export interface ProcedureProposal {
  readonly procedure: string;
  readonly check: string;
}

/** A procedure that has begun, and where it stands. */
export interface Standing {
  readonly procedure: Procedure;
  readonly place: Place;
}

/**
 * What do the trees want to know next?
 *
 * Those begin that fit what is seen, or all of them while that is not known; a tree that another
 * hands over to begins as well. Once none of these has a question left, the others are heard too:
 * what was seen may have been seen wrongly.
 */
export function proposals(procedures: readonly Procedure[], answers: Answers): ProcedureProposal[] {
  const begun = standings(procedures, answers).flatMap(proposalOf);
  if (begun.length > 0) return begun;
  return standingsFrom(procedures, answers, beginsByItself).flatMap(proposalOf);
}

/** The procedures that have begun, in their own order, handed-over ones included. */
export function standings(procedures: readonly Procedure[], answers: Answers): Standing[] {
  const seen = answers.outcomeOf(FIRST_QUESTION);
  const fits = (procedure: Procedure) => procedure.seen.some((answer) => answer === seen);
  return standingsFrom(procedures, answers, procedures.some(fits) ? fits : beginsByItself);
}

const beginsByItself = (procedure: Procedure): boolean => procedure.seen.length > 0;

function standingsFrom(
  procedures: readonly Procedure[],
  answers: Answers,
  begins: (procedure: Procedure) => boolean,
): Standing[] {
  const begun = new Map<string, Standing>();
  const begin = (procedure: Procedure): void => {
    if (begun.has(procedure.id)) return;
    const place = foldProcedure(procedure.machine, answers);
    begun.set(procedure.id, { procedure, place });
    const next = procedures.find((one) => one.id === place.ends?.handsOver);
    if (next !== undefined) begin(next);
  };
  procedures.filter(begins).forEach(begin);
  return procedures
    .flatMap((procedure) => begun.get(procedure.id) ?? [])
    .filter(({ place }) => hasPart(place));
}

/** False for a tree about something that this installation does not have: it ended without asking. */
const hasPart = ({ ends, path }: Place): boolean =>
  ends === undefined || path.some(({ outcome }) => outcome !== NOT_HERE);

function proposalOf({ procedure, place }: Standing): ProcedureProposal[] {
  return place.proposes === undefined ? [] : [{ procedure: procedure.id, check: place.proposes }];
}

/**
 * The same answers with some checks passed over as not taken: those that nobody present may do or
 * that would tell nothing, so that no tree stands still before one of them.
 */
export function passingOver(answers: Answers, checks: ReadonlySet<string>): Answers {
  return {
    ...answers,
    outcomeOf: (check) => answers.outcomeOf(check) ?? (checks.has(check) ? 'not-taken' : undefined),
  };
}
