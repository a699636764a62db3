import type { Tree } from '../../../../machines/procedures/ask.ts';
import { HERE, NOT_HERE, outcomesOf } from '../../../../machines/procedures/outcomes.ts';
import { type Step, startOf, stepsOf } from '../../../../machines/procedures/steps.ts';
import type { Reads } from './checks.ts';

/**
 * What makes a tree a sound one. Each checker answers with the complaints it has, none when the tree
 * is right; each has a broken tree in the tests that it must catch.
 */
export const MOST_STATES = 30;

export interface Known {
  readonly checks: ReadonlyMap<string, Reads>;
  readonly faults: readonly string[];
  readonly procedures: readonly string[];
  /** Faults whose repair takes the pump out of the well. */
  readonly pulls: ReadonlySet<string>;
}

export type Checker = (machine: Tree, known: Known) => string[];

const steps = (machine: Tree): Step[] => [...stepsOf(machine).values()];

export const size: Checker = (machine) =>
  steps(machine).length > MOST_STATES ? [`${steps(machine).length} states`] : [];

export const reachable: Checker = (machine) => {
  const reached = behind(machine, startOf(machine)).add(startOf(machine));
  return steps(machine).flatMap(({ state }) => (reached.has(state) ? [] : [`${state} is never reached`]));
};

export const acyclic: Checker = (machine) =>
  steps(machine).flatMap(({ state }) =>
    behind(machine, state).has(state) ? [`${state} leads back to itself`] : [],
  );

/** Every state asks, forks or ends, and only an ending has no way on. */
export const noDeadEnd: Checker = (machine) =>
  steps(machine).flatMap(({ state, check, fork, ends, ways }) => {
    const kinds = [check, fork, ends].filter((one) => one !== undefined).length;
    if (kinds !== 1) return [`${state} must do one thing: ask, fork or end`];
    const isFinal = machine.states[state]?.type === 'final';
    if ((ends !== undefined) !== isFinal)
      return [`${state} ends without being final, or the other way round`];
    return (ways.size === 0) === isFinal ? [] : [`${state} has no way on`];
  });

/** Each outcome that the check can have leads on, and no way waits for one that it cannot have. */
export const everyOutcome: Checker = (machine, { checks }) =>
  steps(machine).flatMap(({ state, check, fork, ways }) => {
    if (fork !== undefined) return differences(state, [HERE, NOT_HERE], ways);
    const reads = check === undefined ? undefined : checks.get(check);
    if (reads === undefined) return [];
    const settles = 'answers' in reads ? ['unstable'] : [];
    return differences(state, [...outcomesOf({ reads }), ...settles, NOT_HERE], ways);
  });

export const knownChecks: Checker = (machine, { checks }) =>
  steps(machine).flatMap(({ state, check, fork }) => {
    const asked = check ?? fork;
    return asked === undefined || checks.has(asked) ? [] : [`${state} asks ${asked}, which is no check`];
  });

/** No path asks the same check twice. */
export const askedOnce: Checker = (machine) =>
  steps(machine).flatMap(({ state, check }) => {
    const later = behind(machine, state);
    return steps(machine).flatMap((other) =>
      check !== undefined && other.check === check && later.has(other.state)
        ? [`${check} is asked in ${state} and again in ${other.state}`]
        : [],
    );
  });

/** A check whose readings all lead to the same place tells the tree nothing. */
export const notInVain: Checker = (machine) =>
  steps(machine).flatMap(({ state, check, fork, ways }) => {
    if (check === undefined && fork === undefined) return [];
    const readings = [...ways].filter(
      ([outcome]) => !['not-taken', 'unstable', ...(fork ? [] : [NOT_HERE])].includes(outcome),
    );
    return new Set(readings.map(([, to]) => to)).size < 2 ? [`${state} asks in vain`] : [];
  });

/** An ending says one thing, and what it names exists. */
export const meaningful: Checker = (machine, known) =>
  steps(machine).flatMap(({ state, ends }) => {
    if (ends === undefined) return [];
    const says = Object.keys(ends);
    if (says.length !== 1) return [`${state} must say one thing`];
    if (ends.claims !== undefined) {
      if (ends.claims.length === 0) return [`${state} claims nothing`];
      return ends.claims.flatMap((fault) =>
        known.faults.includes(fault) ? [] : [`${state} claims ${fault}, which is no fault`],
      );
    }
    if (ends.handsOver !== undefined) {
      const valid = ends.handsOver !== machine.id && known.procedures.includes(ends.handsOver);
      return valid ? [] : [`${state} hands over to ${ends.handsOver}`];
    }
    return (ends.clears ?? ends.undecided) === machine.id ? [] : [`${state} speaks of another part`];
  });

/** A pull is named by no tree that has not asked for two lines on the way. */
export const twoLines: Checker = (machine, { pulls }) => {
  const fewest = fewestAsked(machine);
  return steps(machine).flatMap(({ state, ends }) => {
    const pull = ends?.claims?.find((fault) => pulls.has(fault));
    const asked = fewest.get(state) ?? 0;
    return pull === undefined || asked >= LINES_BEFORE_A_PULL
      ? []
      : [`${state} claims ${pull} after ${asked} of ${LINES_BEFORE_A_PULL} lines`];
  });
};

const LINES_BEFORE_A_PULL = 2;

export const CHECKERS: Readonly<Record<string, Checker>> = {
  size,
  reachable,
  acyclic,
  noDeadEnd,
  everyOutcome,
  knownChecks,
  askedOnce,
  notInVain,
  meaningful,
  twoLines,
};

function differences(
  state: string,
  outcomes: readonly string[],
  ways: ReadonlyMap<string, string>,
): string[] {
  const missing = outcomes.filter((one) => !ways.has(one)).map((one) => `${state} does not handle ${one}`);
  const idle = [...ways.keys()]
    .filter((one) => !outcomes.includes(one))
    .map((one) => `${state} waits for ${one}`);
  return [...missing, ...idle];
}

/** All states that can come after one. */
function behind(machine: Tree, from: string): Set<string> {
  const known = stepsOf(machine);
  const reached = new Set<string>();
  const open = [...(known.get(from)?.ways.values() ?? [])];
  for (let state = open.pop(); state !== undefined; state = open.pop()) {
    if (reached.has(state)) continue;
    reached.add(state);
    open.push(...(known.get(state)?.ways.values() ?? []));
  }
  return reached;
}

/** State → the least number of checks that any way to it asks for. */
function fewestAsked(machine: Tree): Map<string, number> {
  const known = stepsOf(machine);
  const fewest = new Map([[startOf(machine), 0]]);
  const open = [startOf(machine)];
  for (let state = open.pop(); state !== undefined; state = open.pop()) {
    const step = known.get(state);
    const asked = (fewest.get(state) ?? 0) + (step?.check === undefined ? 0 : 1);
    for (const to of step?.ways.values() ?? []) {
      if (asked >= (fewest.get(to) ?? Number.POSITIVE_INFINITY)) continue;
      fewest.set(to, asked);
      open.push(to);
    }
  }
  return fewest;
}
