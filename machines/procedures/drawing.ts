import type { Ending, Tree } from './ask.ts';
import type { PathStep } from './fold.ts';
import { type Step, startOf, stepsOf } from './steps.ts';

/**
 * A tree as an outline that a screen can draw, with the path taken lit.
 *
 * Two outcomes that lead to the same state share one edge. A state that several lead to is drawn
 * once, under the edge that was taken or else under the first; everywhere else it is only named.
 */
export interface DrawnState {
  readonly state: string;
  readonly check: string | undefined;
  /** The check whose presence decides, where nobody is asked. */
  readonly fork: string | undefined;
  readonly ends: Ending | undefined;
  /** On the path taken, or where it stands. */
  readonly lit: boolean;
  readonly here: boolean;
  readonly edges: readonly DrawnEdge[];
}

export interface DrawnEdge {
  readonly outcomes: readonly string[];
  readonly lit: boolean;
  readonly to: string;
  /** The state itself, where this is the edge that it is drawn under. */
  readonly drawn: DrawnState | undefined;
}

export function drawTree(machine: Tree, path: readonly PathStep[]): DrawnState {
  const taken = new Map(path.map((one) => [one.state, one.outcome]));
  const pen: Pen = {
    steps: stepsOf(machine),
    taken,
    litTargets: new Map(),
    drawn: new Set(),
    here: undefined,
  };
  let at = startOf(machine);
  for (const { state, outcome } of path) {
    const to = targetOf(pen.steps.get(state), outcome);
    if (to === undefined) break;
    pen.litTargets.set(to, state);
    at = to;
  }
  return draw({ ...pen, here: at }, startOf(machine));
}

interface Pen {
  readonly steps: ReadonlyMap<string, Step>;
  readonly taken: ReadonlyMap<string, string>;
  /** State on the path → the state that it was reached from. */
  readonly litTargets: Map<string, string>;
  readonly drawn: Set<string>;
  readonly here: string | undefined;
}

function draw(pen: Pen, state: string): DrawnState {
  const step = pen.steps.get(state);
  pen.drawn.add(state);
  const edges =
    step === undefined ? [] : edgesOf(step).map(([to, outcomes]) => drawEdge(pen, state, { to, outcomes }));
  return {
    state,
    check: step?.check,
    fork: step?.fork,
    ends: step?.ends,
    lit: state === pen.here || pen.taken.has(state),
    here: state === pen.here,
    edges,
  };
}

function drawEdge(pen: Pen, from: string, edge: { to: string; outcomes: string[] }): DrawnEdge {
  const litFrom = pen.litTargets.get(edge.to);
  const mine = litFrom === undefined || litFrom === from;
  const drawn = mine && !pen.drawn.has(edge.to) ? draw(pen, edge.to) : undefined;
  return { ...edge, lit: litFrom === from, drawn };
}

/** Targets in the order written, each with the outcomes that lead there. */
function edgesOf(step: Step): [string, string[]][] {
  const edges = new Map<string, string[]>();
  for (const [outcome, to] of step.ways) edges.set(to, [...(edges.get(to) ?? []), outcome]);
  return [...edges];
}

function targetOf(step: Step | undefined, outcome: string): string | undefined {
  return step?.ways.get(outcome) ?? step?.ways.get('not-taken');
}
