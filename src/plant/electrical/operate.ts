import type { Margins, Mode } from '../types.ts';
import {
  calledPosition,
  type Drive,
  isBranchIn,
  positionOf,
  reducedFor,
  type SiteNet,
  spareTorque,
  startsIn,
} from './drive.ts';
import type { Circuit } from './install.ts';
import type { Phasors } from './network.ts';
import { type Reduced, reduce, type Turning, turn, turning, voltsWhen } from './reduce.ts';
import { forcedRun, heldAt, type RunEnd, runUp, stall } from './run-up.ts';
import { coilVolts } from './start-control.ts';

/**
 * Which state does an installation end in when it is called, and how near is it to another?
 *
 * The run-up decides, or a mode is forced whatever the margins say; the network is then solved once
 * at the speed reached, and every meter reads that solution.
 */
export interface Operating {
  readonly mode: Mode;
  readonly end: RunEnd;
  readonly reduced: Reduced;
  readonly turning: Turning;
  readonly volts: Phasors;
}

/** Bounds of a margin: beyond them the event is certain either way. */
export const MOST_MARGIN = 25;
const LEAST_TORQUE = 1e-12;

export function operate(drive: Drive, forced?: Mode): Operating {
  const end = endOf(drive, forced);
  const settled = settle(drive, end);
  const released = !isBranchIn(drive.circuit, settled.reduced.position);
  return { ...settled, mode: forced ?? { starts: end.speed !== 0, releases: released } };
}

function endOf(drive: Drive, forced: Mode | undefined): RunEnd {
  if (forced === undefined) return runUp(drive);
  return forced.starts ? forcedRun(drive, forced.releases) : stall(drive);
}

/** The network solved at the speed and contact where a run-up ended. */
function settle(drive: Drive, end: RunEnd): Omit<Operating, 'mode'> {
  const reduced = reducedFor(drive, end.startIn);
  const at = turning();
  turn(reduced, 1 - end.speed, at);
  return { end, reduced, turning: at, volts: voltsWhen(reduced, at) };
}

/** The instant of power-up: at standstill, with the start branch as power-up leaves it. */
export function atPowerUp(drive: Drive): Operating {
  const startIn = startsIn(drive);
  return { ...settle(drive, heldAt(0, startIn)), mode: { starts: false, releases: !startIn } };
}

/** An installation whose motor has no model: what is alive, and nothing about the motor itself. */
export function withoutModel(circuit: Circuit, at: SiteNet): Operating {
  const position = { ...calledPosition(circuit, at), relay: false };
  const reduced = reduce(circuit, position, at.net);
  return {
    mode: { starts: true, releases: true },
    end: heldAt(0, false),
    reduced,
    turning: turning(),
    volts: reduced.base,
  };
}

/** How far the installation is from the other modes. */
export function marginsOf(drive: Drive): Margins {
  return { start: startMargin(drive), release: releaseMargin(drive) };
}

function startMargin(drive: Drive): number {
  const pull = Math.abs(spareTorque(drive, 0, startsIn(drive)));
  return bounded(Math.log(Math.max(pull, LEAST_TORQUE) / drive.breakaway));
}

/**
 * With the start branch kept in to the end of the run-up: coil volts against pick-up, or speed
 * against the speed of release, in standard deviations of sound parts.
 */
function releaseMargin(drive: Drive): number {
  const { control, circuit } = drive;
  if (control.kind === 'none') return MOST_MARGIN;
  if (isBranchIn(circuit, positionOf(drive, false))) return -MOST_MARGIN;
  if (!isBranchIn(circuit, positionOf(drive, true)) || !startsIn(drive)) return MOST_MARGIN;
  const end = forcedRun(drive, false);
  if (control.kind === 'sensing')
    return bounded((Math.abs(end.speed) - control.releaseSpeed) / control.spread);
  spareTorque(drive, end.speed, true);
  return bounded(
    (coilVolts(reducedFor(drive, true), drive.at, control.coil) - control.pickUp) / control.spread,
  );
}

const bounded = (margin: number): number => Math.max(-MOST_MARGIN, Math.min(MOST_MARGIN, margin));
