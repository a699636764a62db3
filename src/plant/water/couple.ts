import type { Injection, Plant, PlantState, Unknowns } from '../types.ts';
import type { Drive, WaterInjection, WaterPlant, WaterState } from './types.ts';

/**
 * What does the whole installation do: switch to motor, motor to pump, pump to gauge, gauge to switch?
 *
 * The motor turns the pump at some speed; at that speed the pump asks the shaft for some share of its
 * load; that load moves the speed. The round is followed until the load stays, which takes two or
 * three turns because the speed of an induction motor hardly moves.
 */
export interface Whole {
  readonly electrical: PlantState;
  readonly water: WaterState;
  /** Share of the nominal shaft load that the water asks for. */
  readonly load: number;
  /** What a customer sees, pressure included. */
  readonly seen: Seen;
}

export type Seen =
  | 'silent-with-pressure'
  | 'silent-without-pressure'
  | 'hums-or-trips'
  | 'runs-without-water'
  | 'runs-badly'
  | 'works-now';

export interface WholeInjection {
  readonly electrical: Injection;
  readonly water: WaterInjection;
}

/** What the house calls too little; from the record of its water system. */
export interface Wants {
  readonly weakTap: number;
  readonly leastFill: number;
}

export interface Halves {
  readonly plant: Plant;
  readonly water: WaterPlant;
  readonly wants: Wants;
}

const MOST_ROUNDS = 20;
const SAME_LOAD = 1e-6;

export function couple(halves: Halves, faults: WholeInjection, unknowns: Unknowns = {}): Whole {
  let load = 1;
  let electrical = halves.plant.state({ ...faults.electrical, pumpLoad: load }, unknowns);
  let water = halves.water.state(faults.water, driveOf(electrical));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const asked = water.load();
    if (Math.abs(asked - load) < SAME_LOAD) break;
    load = asked;
    electrical = halves.plant.state({ ...faults.electrical, pumpLoad: load }, unknowns);
    water = halves.water.state(faults.water, driveOf(electrical));
  }
  return { electrical, water, load, seen: seen(electrical, water, halves.wants) };
}

/** What the electrical state does for the pump. A motor without a model is taken at its word. */
function driveOf(electrical: PlantState): Drive {
  const called = electrical.turns(true);
  const satisfied = electrical.turns(false);
  const speed = called ?? 1;
  return { turns: speed !== 0, speed, always: (satisfied ?? 0) !== 0, follows: speed !== 0 };
}

/**
 * Silence and hum are the motor's; everything else follows from what comes out of the tap.
 *
 * A satisfied system is silent with pressure. What is asked here is what the caller complains of, so a
 * sound one "works now".
 */
function seen(electrical: PlantState, water: WaterState, wants: Wants): Seen {
  const motor = motorSeen(electrical);
  const zone = said(water, 'gauge-zone');
  if (motor === 'hums-or-trips') return motor;
  if (motor === 'silent') return 'silent-without-pressure';
  if (said(water, 'switch-tells') === 'satisfied') return 'silent-without-pressure';
  const tap = number(water, 'tap-pressure') ?? 0;
  if (tap === 0) return zone === 'between' ? 'silent-with-pressure' : 'runs-without-water';
  const fill = number(water, 'fill-time');
  const bad = motor === 'runs-badly' || tap < wants.weakTap || fill === undefined || fill < wants.leastFill;
  return bad || said(water, 'discharge') === 'air' ? 'runs-badly' : 'works-now';
}

function motorSeen(electrical: PlantState): 'silent' | 'hums-or-trips' | 'runs-badly' | 'runs' {
  const at = { look: 'site' as const };
  const site = { powered: true, calling: true, leads: 'connected' as const };
  const got = electrical.read({ at, predict: { rule: 'what-is-seen' }, site });
  if (got.kind !== 'answer') return 'runs';
  if (got.answer === 'silent-without-pressure') return 'silent';
  return got.answer === 'hums-or-trips' || got.answer === 'runs-badly' ? got.answer : 'runs';
}

type Question = Parameters<WaterState['read']>[0];

function said(water: WaterState, question: Question): string | undefined {
  const got = water.read(question);
  return got.kind === 'answer' ? got.answer : undefined;
}

function number(water: WaterState, question: Question): number | undefined {
  const got = water.read(question);
  return got.kind === 'value' ? got.value : undefined;
}
