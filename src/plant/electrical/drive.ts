import { partsOf } from '../layout.ts';
import { elementOf } from './elements/impedance.ts';
import { type Circuit, conduction } from './install.ts';
import { loadTorque, type Machine } from './motor.ts';
import type { Network } from './network.ts';
import { atRest, type Position } from './positions.ts';
import { type Reduced, reduce, type Turning, turn, turning } from './reduce.ts';
import { coilVolts, constant, type StartControl, sensedAmps, startControlOf } from './start-control.ts';

/**
 * An installation ready to be called: contacts at power-up, torque to beat, load to turn.
 *
 * It holds one reduced network for the start branch in and one for it out, made when first needed,
 * and answers three questions of a run-up: is the branch let in at power-up, what torque is spare at
 * a speed, and would the start control change its mind there.
 */
export interface Drive {
  readonly circuit: Circuit;
  readonly machine: Machine;
  readonly control: StartControl;
  /** Position at power-up: contactor decided, start branch not yet. */
  readonly position: Position;
  /** Share of full-load torque that the shaft asks for. */
  readonly load: number;
  /** Newton metres that must be beaten to move at all; Infinity when the shaft is locked. */
  readonly breakaway: number;
  readonly net: Network;
  readonly reduced: { in: Reduced | undefined; out: Reduced | undefined };
  /** Currents at the speed last looked at. */
  readonly at: Turning;
}

/** The state of the site, and a network to work in. */
export interface SiteNet extends Pick<Position, 'calling' | 'leads'> {
  readonly cooled?: boolean | undefined;
  readonly net: Network;
}

/** Undefined when the motor has no model: then nothing can be said of a run-up. */
export function driveOf(circuit: Circuit, at: SiteNet): Drive | undefined {
  const { faulted, context, machine } = circuit;
  if (machine === undefined) return undefined;
  return {
    circuit,
    machine,
    control: startControlOf(circuit),
    position: calledPosition(circuit, at),
    load: shaftLoad(circuit),
    breakaway: faulted.shaft.locked
      ? Infinity
      : context.conditions.breakaway * faulted.shaft.drag * machine.fullTorque,
    net: at.net,
    reduced: { in: undefined, out: undefined },
    at: turning(),
  };
}

/** Share of full load that the shaft asks for: nothing when it turns free. */
export function shaftLoad({ faulted, context }: Circuit): number {
  return faulted.shaft.free ? 0 : context.conditions.load * faulted.shaft.drag;
}

/** Everything that moves as it stands under power, with the contactor in if its coil has enough. */
export function calledPosition(circuit: Circuit, at: SiteNet): Position {
  const rest = atRest({ ...at, calling: circuit.faulted.command ?? at.calling });
  return { ...rest, contactor: pullsIn(circuit, rest, at.net) };
}

/** Scratch: the motor at standstill, before the contactor is decided. */
const still = turning();

function pullsIn(circuit: Circuit, rest: Position, net: Network): boolean {
  const coil = partsOf(circuit.layout, 'contactor-coil')[0];
  if (coil === undefined) return false;
  const { input } = circuit.context;
  const share = constant(elementOf(input, 'contactor-coil').pullInShare, 'contactor-coil', 'pullInShare');
  const from = reduce(circuit, rest, net);
  turn(from, 1, still);
  return coilVolts(from, still, coil) >= share * input.motor.volts;
}

/** Position with the start branch told in or out; a stuck contact does not listen. */
export function positionOf(drive: Drive, startIn: boolean): Position {
  return { ...drive.position, relay: startIn, sense: startIn };
}

export function reducedFor(drive: Drive, startIn: boolean): Reduced {
  const key = startIn ? 'in' : 'out';
  const known = drive.reduced[key];
  if (known !== undefined) return known;
  const made = reduce(drive.circuit, positionOf(drive, startIn), drive.net);
  drive.reduced[key] = made;
  return made;
}

/** Whether power-up lets the start branch in. */
export function startsIn(drive: Drive): boolean {
  const { control } = drive;
  if (control.kind !== 'sensing') return true;
  const out = reducedFor(drive, false);
  turn(out, 1, drive.at);
  return sensedAmps(out, drive.at, control.senses) >= control.fireAmps;
}

/** Where the start control wants the branch, at the currents of `drive.at`. */
export function controlled(drive: Drive, speed: number, startIn: boolean): boolean {
  const { control } = drive;
  if (control.kind === 'sensing') return startIn && Math.abs(speed) < control.releaseSpeed;
  if (control.kind === 'none') return startIn;
  const volts = coilVolts(reducedFor(drive, startIn), drive.at, control.coil);
  return startIn ? volts < control.pickUp : volts <= control.dropOut;
}

/** Torque left to accelerate at a speed, newton metres; leaves the currents in `drive.at`. */
export function spareTorque(drive: Drive, speed: number, startIn: boolean): number {
  turn(reducedFor(drive, startIn), 1 - speed, drive.at);
  return drive.at.torque - loadTorque(drive.machine, speed, drive.load);
}

const CONTACTS = ['relay-contact', 'sense-switch', 'start-switch-inside'] as const;

/** Whether a start contact really conducts, stuck ones included. */
export function isBranchIn(circuit: Circuit, position: Position): boolean {
  return CONTACTS.some((kind) =>
    partsOf(circuit.layout, kind).some((part) => {
      const how = conduction(circuit, part, position);
      return how === 'made' || how === 'bridged';
    }),
  );
}
