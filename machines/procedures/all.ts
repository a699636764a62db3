import type { Tree } from './ask.ts';
import { boundPump } from './bound-pump.machine.ts';
import { controlLoop } from './control-loop.machine.ts';
import { delivery } from './delivery.machine.ts';
import { driveOrProtector } from './drive-or-protector.machine.ts';
import { groundLeak } from './ground-leak.machine.ts';
import { groundPath } from './ground-path.machine.ts';
import { highLoad } from './high-load.machine.ts';
import { houseSide } from './house-side.machine.ts';
import { lastRound } from './last-round.machine.ts';
import { leakDown } from './leak-down.machine.ts';
import { matchingParts } from './matching-parts.machine.ts';
import { motorAndCable } from './motor-and-cable.machine.ts';
import { onTheWayOut } from './on-the-way-out.machine.ts';
import { overloads } from './overloads.machine.ts';
import { pressureSwitch } from './pressure-switch.machine.ts';
import { pumpCircuit } from './pump-circuit.machine.ts';
import { pumpEnd } from './pump-end.machine.ts';
import { pumpFeed } from './pump-feed.machine.ts';
import { runningLoad } from './running-load.machine.ts';
import { service } from './service.machine.ts';
import { settingsAndGauge } from './settings-and-gauge.machine.ts';
import { startHeldIn } from './start-held-in.machine.ts';
import { startingParts } from './starting-parts.machine.ts';
import { stepsOf } from './steps.ts';
import { supply } from './supply.machine.ts';
import { supplyAtStart } from './supply-at-start.machine.ts';
import { switchDead } from './switch-dead.machine.ts';
import { tankAndCycling } from './tank-and-cycling.machine.ts';
import { trips } from './trips.machine.ts';
import { twoWireMotor } from './two-wire-motor.machine.ts';
import { waterRound } from './water-round.machine.ts';
import { well } from './well.machine.ts';
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

/**
 * Order of the trade: supply, switch, box and the start, how it runs, the house, the tank, what is
 * delivered, then motor and cable, and last what a sound round leaves over.
 */
export const PROCEDURES: readonly Procedure[] = [
  begins(supply, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
  begins(service),
  begins(pumpFeed),
  begins(driveOrProtector, 'silent-with-pressure', 'silent-without-pressure', 'runs-badly', 'works-now'),
  begins(settingsAndGauge, 'silent-with-pressure', 'silent-without-pressure', 'runs-badly', 'works-now'),
  begins(pressureSwitch, 'silent-without-pressure', 'runs-badly', 'works-now'),
  begins(switchDead),
  begins(controlLoop, 'silent-without-pressure', 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(overloads, 'silent-without-pressure', 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(trips, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
  begins(pumpCircuit),
  begins(startingParts, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
  begins(boundPump),
  begins(supplyAtStart, 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(matchingParts, 'hums-or-trips', 'runs-without-water', 'runs-badly', 'works-now'),
  begins(runningLoad, 'hums-or-trips', 'runs-without-water', 'runs-badly', 'works-now'),
  begins(startHeldIn),
  begins(highLoad),
  begins(houseSide, 'silent-with-pressure', 'runs-badly', 'works-now'),
  begins(tankAndCycling, 'runs-badly', 'works-now'),
  begins(leakDown, 'runs-badly', 'works-now'),
  begins(delivery, 'runs-without-water', 'runs-badly'),
  begins(well, 'runs-without-water', 'runs-badly', 'works-now'),
  begins(pumpEnd),
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
  begins(groundLeak),
  begins(groundPath, 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(lastRound),
  begins(onTheWayOut),
  begins(waterRound),
];

/** Checks that some tree asks; the planner proposes the others by itself. */
export const HELD_CHECKS: ReadonlySet<string> = new Set(
  PROCEDURES.flatMap(({ machine }) => [...stepsOf(machine).values()].flatMap(({ check }) => check ?? [])),
);

function begins(machine: Tree, ...seen: Seen[]): Procedure {
  return { id: machine.id, machine, seen };
}
