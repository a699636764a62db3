import type { Tree } from './ask.ts';
import { controlLoop } from './control-loop.machine.ts';
import { highLoad } from './high-load.machine.ts';
import { lastRound } from './last-round.machine.ts';
import { motorAndCable } from './motor-and-cable.machine.ts';
import { overloads } from './overloads.machine.ts';
import { pressureSwitch } from './pressure-switch.machine.ts';
import { runningLoad } from './running-load.machine.ts';
import { service } from './service.machine.ts';
import { startHeldIn } from './start-held-in.machine.ts';
import { startingParts } from './starting-parts.machine.ts';
import { stepsOf } from './steps.ts';
import { supply } from './supply.machine.ts';
import { trips } from './trips.machine.ts';
import { twoWireMotor } from './two-wire-motor.machine.ts';
import { wellHead } from './well-head.machine.ts';

/**
 * The troubleshooting trees, and what must be seen for each to begin.
 *
 * A tree without `seen` begins only when another hands over to it. What an installation does not
 * have needs no condition: its checks do not apply, and the tree ends by itself.
 */
export interface Procedure {
  readonly id: string;
  readonly machine: Tree;
  /** Answers of the first question with which it begins. */
  readonly seen: readonly Seen[];
}

export const FIRST_QUESTION = 'what-is-seen';

export type Seen =
  | 'silent-with-pressure'
  | 'silent-without-pressure'
  | 'hums-or-trips'
  | 'runs-without-water'
  | 'runs-badly'
  | 'works-now';

/** Order of the trade: supply, switch, box, motor, then below ground. */
export const PROCEDURES: readonly Procedure[] = [
  begins(supply, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
  begins(service),
  begins(pressureSwitch, 'silent-with-pressure', 'silent-without-pressure', 'runs-badly', 'works-now'),
  begins(controlLoop, 'silent-without-pressure', 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(overloads, 'silent-without-pressure', 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(trips, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
  begins(startingParts, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
  begins(runningLoad, 'hums-or-trips', 'runs-without-water', 'runs-badly', 'works-now'),
  begins(startHeldIn),
  begins(highLoad),
  begins(lastRound),
  begins(
    motorAndCable,
    'silent-without-pressure',
    'hums-or-trips',
    'runs-without-water',
    'runs-badly',
    'works-now',
  ),
  begins(twoWireMotor),
  begins(wellHead),
];

/** Checks that some tree asks; the planner proposes the others by itself. */
export const HELD_CHECKS: ReadonlySet<string> = new Set(
  PROCEDURES.flatMap(({ machine }) => [...stepsOf(machine).values()].flatMap(({ check }) => check ?? [])),
);

function begins(machine: Tree, ...seen: Seen[]): Procedure {
  return { id: machine.id, machine, seen };
}
