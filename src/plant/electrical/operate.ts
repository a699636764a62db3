import { partsOf } from '../layout.ts';
import type { Margins, Mode } from '../types.ts';
import { elementOf } from './elements/impedance.ts';
import { type Circuit, conduction } from './install.ts';
import { loadTorque, type Machine } from './motor.ts';
import type { Network, Phasors } from './network.ts';
import { atRest, type Position } from './positions.ts';
import { type Reduced, reduce, type Turning, turn, turning, voltsWhen } from './reduce.ts';
import { coilVolts, constant, type StartControl, sensedAmps, startControlOf } from './start-control.ts';

/**
 * Which state does the motor end in when it is called?
 *
 * From standstill in steps of one percent of synchronous speed in the direction of the torque, with
 * the start control looked at on every step, to the first speed where torque meets load. There are
 * several equilibria (crawling, start branch held in) and the way decides, so no solver jumps ahead.
 * A mode may be forced, whatever the margins say. Leaves out time: how long a run-up takes.
 *
 * @source method: march of the torque-speed curve; the steps and the hysteresis are ours
 */
export interface Drive {
  readonly circuit: Circuit;
  readonly machine: Machine;
  readonly control: StartControl;
  /** Position at power-up: contactor decided, start branch in or out. */
  readonly position: Position;
  readonly load: number;
  /** Newton metres that must be beaten to move at all; Infinity when the shaft is locked. */
  readonly breakaway: number;
  readonly net: Network;
  readonly reduced: { in: Reduced | undefined; out: Reduced | undefined };
  readonly at: Turning;
}

/** The state of the site, and a network to work in. */
export interface SiteNet extends Pick<Position, 'calling' | 'leads'> {
  readonly cooled?: boolean | undefined;
  readonly net: Network;
}

/** Where a run-up ended. */
export interface RunEnd {
  /** Share of synchronous speed, negative when turning backwards. */
  readonly speed: number;
  readonly startIn: boolean;
  /** The relay kept opening and closing. */
  readonly chatters: boolean;
}

export interface Operating {
  readonly mode: Mode;
  readonly end: RunEnd;
  readonly reduced: Reduced;
  readonly turning: Turning;
  readonly volts: Phasors;
}

const STEP = 0.01;
const MOST_STEPS = 600;
const MOST_CHANGES = 40;
const HALVINGS = 32;
/** Bounds of a margin: beyond them the event is certain either way. */
const MOST_MARGIN = 25;
const LEAST_TORQUE = 1e-12;

/** Gets an installation ready to be called: decides the contactor, and whether the start branch is in. */
export function driveOf(circuit: Circuit, machine: Machine, at: SiteNet): Drive {
  const { faulted, context } = circuit;
  const control = startControlOf(circuit);
  const rest = atRest({ ...at, calling: faulted.command ?? at.calling });
  const drag = faulted.shaft.drag;
  const drive = {
    circuit,
    machine,
    control,
    position: { ...rest, contactor: pullsIn(circuit, machine, { position: rest, net: at.net }) },
    load: faulted.shaft.free ? 0 : context.conditions.load * drag,
    breakaway: faulted.shaft.locked ? Infinity : context.conditions.breakaway * drag * machine.fullTorque,
    net: at.net,
    reduced: { in: undefined, out: undefined },
    at: turning(),
  };
  return drive;
}

/** A contactor pulls in when its coil has enough of the rated volts; without one the question is idle. */
function pullsIn(
  circuit: Circuit,
  machine: Machine | undefined,
  at: { position: Position; net: Network },
): boolean {
  const coil = partsOf(circuit.layout, 'contactor-coil')[0];
  if (coil === undefined) return false;
  const { input } = circuit.context;
  const share = constant(elementOf(input, 'contactor-coil').pullInShare, 'contactor-coil', 'pullInShare');
  const from = reduce(circuit, at.position, at.net);
  const still = turning();
  if (machine !== undefined) turn(machine, from, 1, still);
  return coilVolts(from, still, coil) >= share * input.motor.volts;
}

/** An installation whose motor has no model: what is alive, and nothing about the motor itself. */
export function withoutModel(circuit: Circuit, at: SiteNet): Operating {
  const rest = atRest({ ...at, calling: circuit.faulted.command ?? at.calling });
  const contactor = pullsIn(circuit, undefined, { position: rest, net: at.net });
  const reduced = reduce(circuit, { ...rest, contactor, relay: false }, at.net);
  const end = { speed: 0, startIn: false, chatters: false };
  return { mode: { starts: false, releases: true }, end, reduced, turning: turning(), volts: reduced.base };
}

/** Position with the start branch told in or out; a stuck contact does not listen. */
function positionOf(drive: Drive, startIn: boolean): Position {
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
  turn(drive.machine, out, 1, drive.at);
  return sensedAmps(out, drive.at, control.senses) >= control.fireAmps;
}

function controlled(drive: Drive, speed: number, startIn: boolean): boolean {
  const { control } = drive;
  if (control.kind === 'sensing') return startIn && Math.abs(speed) < control.releaseSpeed;
  if (control.kind === 'none') return startIn;
  const volts = coilVolts(reducedFor(drive, startIn), drive.at, control.coil);
  return startIn ? volts < control.pickUp : volts <= control.dropOut;
}

/** Torque left to accelerate at a speed, newton metres; leaves the currents in `drive.at`. */
function spare(drive: Drive, speed: number, startIn: boolean): number {
  turn(drive.machine, reducedFor(drive, startIn), 1 - speed, drive.at);
  return drive.at.torque - loadTorque(drive.machine, speed, drive.load);
}

/** Marches from a speed to the first equilibrium; `held` keeps the start branch as it is. */
function march(drive: Drive, from: { speed: number; startIn: boolean }, held: boolean): RunEnd {
  let { speed, startIn } = from;
  let before = { speed, sign: 0 };
  let changes = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    const sign = Math.sign(spare(drive, speed, startIn));
    if (!held && controlled(drive, speed, startIn) !== startIn) {
      if (++changes > MOST_CHANGES) return { speed, startIn: true, chatters: true };
      startIn = !startIn;
      before = { speed, sign: 0 };
      continue;
    }
    if (sign === 0) return { speed, startIn, chatters: false };
    if (before.sign === -sign) {
      speed = meet(drive, { one: before.speed, other: speed }, startIn);
      if (held || controlled(drive, speed, startIn) === startIn) return { speed, startIn, chatters: false };
      if (++changes > MOST_CHANGES) return { speed, startIn: true, chatters: true };
      startIn = !startIn;
      before = { speed, sign: 0 };
      continue;
    }
    before = { speed, sign };
    speed = Math.max(-1, Math.min(1, speed + sign * STEP));
  }
  return { speed, startIn, chatters: true };
}

/** Speed between two where torque meets load; leaves the currents there in `drive.at`. */
function meet(drive: Drive, between: { one: number; other: number }, startIn: boolean): number {
  let { one, other } = between;
  const sign = Math.sign(spare(drive, one, startIn));
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (one + other) / 2;
    if (Math.sign(spare(drive, middle, startIn)) === sign) one = middle;
    else other = middle;
  }
  const speed = (one + other) / 2;
  spare(drive, speed, startIn);
  return speed;
}

/** The fastest equilibrium in a direction, for a motor that was given a push; 0 when there is none. */
function fastest(drive: Drive, direction: number, startIn: boolean): number {
  for (let n = 100; n > 0; n--) {
    const speed = direction * (n - 1) * STEP;
    if (spare(drive, speed, startIn) * direction <= 0) continue;
    return meet(drive, { one: speed, other: direction * n * STEP }, startIn);
  }
  return 0;
}

/** Called, with nothing forced. */
function natural(drive: Drive): RunEnd {
  const startIn = startsIn(drive);
  const pull = spare(drive, 0, startIn);
  if (Math.abs(pull) >= drive.breakaway) return march(drive, { speed: 0, startIn }, false);
  return { speed: 0, startIn: controlled(drive, 0, startIn), chatters: false };
}

/** Made to run, whatever the torque at standstill; the start branch ends as told. */
function running(drive: Drive, releases: boolean): RunEnd {
  const startIn = startsIn(drive);
  const pull = spare(drive, 0, startIn);
  const strong = Math.abs(pull) >= Math.min(drive.breakaway, drive.machine.fullTorque);
  if (!strong) return pushed(drive, pull, !releases);
  const end = march(drive, { speed: 0, startIn: releases ? startIn : true }, !releases);
  if (!releases || !end.startIn) return end;
  const out = march(drive, { speed: end.speed, startIn: false }, true);
  return out.speed === 0 ? pushed(drive, pull, false) : out;
}

function pushed(drive: Drive, pull: number, startIn: boolean): RunEnd {
  const first = fastest(drive, pull < 0 ? -1 : 1, startIn);
  const speed = first === 0 ? fastest(drive, pull < 0 ? 1 : -1, startIn) : first;
  return { speed, startIn, chatters: false };
}

/** The state reached when called, or the forced mode. */
export function operate(drive: Drive, forced?: Mode): Operating {
  const end =
    forced === undefined
      ? natural(drive)
      : forced.starts
        ? running(drive, forced.releases)
        : { speed: 0, startIn: controlledAtRest(drive), chatters: false };
  const reduced = reducedFor(drive, end.startIn);
  const at = turning();
  turn(drive.machine, reduced, 1 - end.speed, at);
  const mode = forced ?? { starts: end.speed !== 0, releases: !isBranchIn(drive.circuit, reduced.position) };
  return { mode, end, reduced, turning: at, volts: voltsWhen(reduced, at) };
}

function controlledAtRest(drive: Drive): boolean {
  const startIn = startsIn(drive);
  spare(drive, 0, startIn);
  return controlled(drive, 0, startIn);
}

/** The instant of power-up: at standstill, with the start branch as power-up leaves it. */
export function atPowerUp(drive: Drive): Operating {
  const startIn = startsIn(drive);
  const reduced = reducedFor(drive, startIn);
  const at = turning();
  turn(drive.machine, reduced, 1, at);
  const end = { speed: 0, startIn, chatters: false };
  return {
    mode: { starts: false, releases: !startIn },
    end,
    reduced,
    turning: at,
    volts: voltsWhen(reduced, at),
  };
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

/** How far the installation is from the other modes. */
export function marginsOf(drive: Drive): Margins {
  return { start: startMargin(drive), release: releaseMargin(drive) };
}

function startMargin(drive: Drive): number {
  const pull = Math.abs(spare(drive, 0, startsIn(drive)));
  return bounded(Math.log(Math.max(pull, LEAST_TORQUE) / drive.breakaway));
}

function releaseMargin(drive: Drive): number {
  const { control, circuit } = drive;
  if (control.kind === 'none') return MOST_MARGIN;
  if (isBranchIn(circuit, positionOf(drive, false))) return -MOST_MARGIN;
  if (!isBranchIn(circuit, positionOf(drive, true)) || !startsIn(drive)) return MOST_MARGIN;
  const end = running(drive, false);
  if (control.kind === 'sensing')
    return bounded((Math.abs(end.speed) - control.releaseSpeed) / control.spread);
  spare(drive, end.speed, true);
  return bounded(
    (coilVolts(reducedFor(drive, true), drive.at, control.coil) - control.pickUp) / control.spread,
  );
}

const bounded = (margin: number): number => Math.max(-MOST_MARGIN, Math.min(MOST_MARGIN, margin));
