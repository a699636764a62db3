import type { Tree } from './ask.ts';
import { controlLoop } from './control-loop.machine.ts';
import { motorAndCable } from './motor-and-cable.machine.ts';
import { overloads } from './overloads.machine.ts';
import { pressureSwitch } from './pressure-switch.machine.ts';
import { startingParts } from './starting-parts.machine.ts';
import { supply } from './supply.machine.ts';
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
  begins(pressureSwitch, 'silent-with-pressure', 'silent-without-pressure', 'runs-badly', 'works-now'),
  begins(controlLoop, 'silent-without-pressure', 'hums-or-trips'),
  begins(overloads, 'silent-without-pressure', 'hums-or-trips', 'runs-badly', 'works-now'),
  begins(startingParts, 'silent-without-pressure', 'hums-or-trips', 'runs-badly'),
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

function begins(machine: Tree, ...seen: Seen[]): Procedure {
  return { id: machine.id, machine, seen };
}
