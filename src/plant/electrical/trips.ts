import type { Element, PartKind } from '../../schema/netlist.ts';
import { partsOf } from '../layout.ts';
import { clampedCurrent, magnitude, partCurrent } from './branch.ts';
import { elementOf } from './elements/impedance.ts';
import { type Circuit, conduction } from './install.ts';
import type { Operating } from './operate.ts';

/**
 * Which protection opens, how soon, and when does it close again?
 *
 * Heat with a constant rate: above the multiple of its rating that it carries for ever, a device
 * opens after a time that falls with the square of the current; a magnetic breaker opens at once
 * above another, a ground-fault device as soon as too much does not come back on its own poles.
 * Without current the heat dies away with one time constant. Ratings are those of the motor's row:
 * its usual breaker, which a time-delay fuse follows, and its service-factor amps. Leaves out the
 * temperature of the place and what the cable leaks through its own capacitance.
 *
 * @source law: adiabatic heating, I²t; first-order cooling
 */
export interface Trip {
  readonly part: number;
  readonly kind: TripKind;
  readonly seconds: number;
  /** Undefined for what stays open until somebody closes or replaces it. */
  readonly rest: Rest | undefined;
}

/** What follows an opening, in seconds. */
export interface Rest {
  /** Without current until it closes by itself or can be reset. */
  readonly closesAfter: number;
  /** From that moment to the next opening, if the same current comes back: it is still warm. */
  readonly opensAgain: number;
}

export const TRIP_KINDS = [
  'breaker-pole',
  'ground-fault-pole',
  'fuse',
  'overload',
  'protector',
] as const satisfies readonly PartKind[];
export type TripKind = (typeof TRIP_KINDS)[number];

/** All devices that would open, the fastest first. */
export function tripsOf(circuit: Circuit, at: Operating): readonly Trip[] {
  const trips: Trip[] = [];
  for (const kind of TRIP_KINDS) {
    for (const part of partsOf(circuit.layout, kind)) {
      const seconds = secondsToOpen(circuit, at, { part, kind });
      if (seconds === undefined) continue;
      trips.push({ part, kind, seconds, rest: restAfter(elementOf(circuit.context.input, kind), seconds) });
    }
  }
  return trips.sort((one, other) => one.seconds - other.seconds || one.part - other.part);
}

interface Device {
  readonly part: number;
  readonly kind: TripKind;
}

function secondsToOpen(circuit: Circuit, at: Operating, device: Device): number | undefined {
  if (conduction(circuit, device.part, at.reduced.position) !== 'made') return undefined;
  return sensesResidual(circuit, at, device.kind) ? 0 : secondsOfHeating(circuit, at, device);
}

/** Whether more than it bears is missing on the way back: the poles of one device are its kind. */
function sensesResidual(circuit: Circuit, at: Operating, kind: TripKind): boolean {
  const { residual } = elementOf(circuit.context.input, kind);
  if (residual === undefined) return false;
  return magnitude(clampedCurrent(circuit, at, partsOf(circuit.layout, kind))) >= residual;
}

function secondsOfHeating(circuit: Circuit, at: Operating, device: Device): number | undefined {
  const { trip } = elementOf(circuit.context.input, device.kind);
  const rating = ratingOf(circuit, device);
  if (trip === undefined || rating === undefined) return undefined;
  const multiple = magnitude(partCurrent(circuit, at, device.part)) / rating;
  if (trip.atOnce !== undefined && multiple >= trip.atOnce) return 0;
  return multiple > trip.holds ? trip.seconds / (multiple ** 2 - trip.holds ** 2) : undefined;
}

/**
 * How a device that opened by heat comes back: its heat h falls as e^(−t/τ), and what is left when
 * it closes need not be heated again.
 *
 * @param seconds in which the current opened it from cold
 */
export function restAfter({ coolsIn, closesAt }: Element, seconds: number): Rest | undefined {
  if (coolsIn === undefined || closesAt === undefined) return undefined;
  return { closesAfter: coolsIn * Math.log(1 / closesAt), opensAgain: seconds * (1 - closesAt) };
}

/** Amps that a device is sized for; undefined when the row does not say, or it is not there. */
function ratingOf({ layout, context }: Circuit, { part, kind }: Device): number | undefined {
  const { motor } = context.input;
  if (kind === 'breaker-pole' || kind === 'ground-fault-pole' || kind === 'fuse') return motor.breaker?.usual;
  if (kind === 'protector' && motor.protector !== 'inside') return undefined;
  const amps = (motor.serviceFactorLoad ?? motor.fullLoad)?.amps;
  if (amps === undefined) return undefined;
  if ('line' in amps) return amps.line;
  const lead = layout.parts[part]!.lead;
  return lead === 'black' || (lead === 'red' && amps.red > 0) ? amps[lead] : amps.yellow;
}

export type TripClass = 'at-once' | 'seconds' | 'minutes' | 'holds';

const SECOND = 1;
const MINUTE = 60;
const HOUR = 3600;

/** The words for how soon: within a second, within a minute, within an hour, never. */
export function tripClass(trips: readonly Trip[]): TripClass {
  const first = trips[0]?.seconds ?? Infinity;
  if (first < SECOND) return 'at-once';
  if (first < MINUTE) return 'seconds';
  return first < HOUR ? 'minutes' : 'holds';
}
