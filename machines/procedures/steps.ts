import type { Ending, StepMeta, Tree } from './ask.ts';

/** One state of a tree as plain data: what it asks or how it ends, and where each outcome leads. */
export interface Step {
  readonly state: string;
  readonly check: string | undefined;
  /** The check whose presence decides here; nobody is asked. */
  readonly fork: string | undefined;
  readonly ends: Ending | undefined;
  /** Outcome → state, in the order written. */
  readonly ways: ReadonlyMap<string, string>;
}

const known = new WeakMap<Tree, ReadonlyMap<string, Step>>();

/**
 * The states of a tree by name, read once from the machine.
 *
 * A call folds every tree after every tap and the sweep does so many thousand times; a look-up in
 * this table takes the place of a transition. A property test holds the two to the same answer.
 */
export function stepsOf(machine: Tree): ReadonlyMap<string, Step> {
  const kept = known.get(machine);
  if (kept !== undefined) return kept;
  const steps = new Map(Object.keys(machine.states).map((state) => [state, stepOf(machine, state)]));
  known.set(machine, steps);
  return steps;
}

/** Name of the state in which a tree begins. */
export function startOf(machine: Tree): string {
  const target = machine.root.initial.target?.[0];
  if (target === undefined) throw new Error(`procedures: ${machine.id} names no initial state; add one`);
  return target.key;
}

function stepOf(machine: Tree, state: string): Step {
  const node = machine.states[state];
  const meta: StepMeta = node?.meta ?? {};
  const ways = new Map<string, string>();
  for (const [outcome, transitions] of Object.entries(node?.on ?? {})) {
    const target = transitions[0]?.target?.[0];
    if (target !== undefined) ways.set(outcome, target.key);
  }
  return { state, check: meta.check, fork: meta.fork, ends: meta.ends, ways };
}
