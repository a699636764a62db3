import { type AnyStateMachine, setup } from 'xstate';
import { HERE, NOT_HERE } from './outcomes.ts';

/**
 * The words in which a troubleshooting tree is written, so that a file reads like the drawing:
 * a state asks for one check and each outcome leads on; a final state says what follows.
 *
 * A tree holds no context, no timers and no numbers. Its events are the outcomes of the comparison
 * of a reading with its window, so its place can be worked out from the answers at any time.
 */
export interface Ending {
  /** One of these faults is what is wrong. Adds no evidence; only the verdict rule ends a call. */
  readonly claims?: readonly string[];
  /** Nothing is wrong with this part. */
  readonly clears?: string;
  /** Another procedure goes on from here. */
  readonly handsOver?: string;
  /** The readings that could be taken do not decide about this part, or contradict each other. */
  readonly undecided?: string;
}

export interface StepMeta {
  readonly check?: string;
  /** Nothing is asked here: the way depends on whether this check exists on the installation. */
  readonly fork?: string;
  readonly ends?: Ending;
}

/** Outcome → name of the state that it leads to. `not-taken` is always among them. */
export type Ways = Readonly<Record<string, string>> & { readonly 'not-taken': string };

/**
 * A state that asks for one check. The other members of a reading set are asked by their own states.
 *
 * A reading that will not settle, and a check that this installation does not have, lead where one
 * that could not be taken leads, unless the tree says otherwise.
 */
export function ask(check: string, ways: Ways) {
  const onward = ways['not-taken'];
  return { meta: { check }, on: { unstable: onward, [NOT_HERE]: onward, ...ways } };
}

/** A state that asks nobody: which way depends on whether the installation has what a check reads. */
export function isHere(check: string, here: string, notHere: string) {
  return { meta: { fork: check }, on: { [HERE]: here, [NOT_HERE]: notHere } };
}

export const claims = (...faults: string[]) => ending({ claims: faults });
export const clears = (part: string) => ending({ clears: part });
export const handsOver = (procedure: string) => ending({ handsOver: procedure });
export const undecided = (part: string) => ending({ undecided: part });

const ending = (ends: Ending) => ({ type: 'final' as const, meta: { ends } });

/** Every tree is made by `tree.createMachine`. */
export const tree = setup({
  types: { events: {} as { type: string }, meta: {} as StepMeta },
});

/** A tree without the names of its own states: what the fold, the drawing and the checkers read. */
export type Tree = AnyStateMachine;
