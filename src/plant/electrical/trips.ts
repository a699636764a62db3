import type { PartKind } from '../../schema/netlist.ts';
import { partsOf } from '../layout.ts';
import { magnitude, partCurrent } from './branch.ts';
import { elementOf } from './elements/impedance.ts';
import { type Circuit, conduction } from './install.ts';
import type { Operating } from './operate.ts';

/**
 * Which protection opens, and how soon?
 *
 * Heat with a constant rate: above the multiple of its rating that it carries for ever, a device
 * opens after a time that falls with the square of the current; a magnetic breaker opens at once
 * above another. Ratings are those of the motor's row: its usual breaker, its service-factor amps.
 * Leaves out cooling between tries and the temperature of the place.
 *
 * @source law: adiabatic heating, I²t
 */
export interface Trip {
  readonly part: number;
  readonly kind: TripKind;
  readonly seconds: number;
}

export const TRIP_KINDS = ['breaker-pole', 'overload', 'protector'] as const satisfies readonly PartKind[];
export type TripKind = (typeof TRIP_KINDS)[number];

/** All devices that would open, the fastest first. */
export function tripsOf(circuit: Circuit, at: Operating): readonly Trip[] {
  const trips: Trip[] = [];
  for (const kind of TRIP_KINDS) {
    for (const part of partsOf(circuit.layout, kind)) {
      const seconds = secondsToOpen(circuit, at, { part, kind });
      if (seconds !== undefined) trips.push({ part, kind, seconds });
    }
  }
  return trips.sort((one, other) => one.seconds - other.seconds || one.part - other.part);
}

function secondsToOpen(
  circuit: Circuit,
  at: Operating,
  device: { part: number; kind: TripKind },
): number | undefined {
  const { trip } = elementOf(circuit.context.input, device.kind);
  const rating = ratingOf(circuit, device);
  if (
    trip === undefined ||
    rating === undefined ||
    conduction(circuit, device.part, at.reduced.position) !== 'made'
  ) {
    return undefined;
  }
  const multiple = magnitude(partCurrent(circuit, at, device.part)) / rating;
  if (trip.atOnce !== undefined && multiple >= trip.atOnce) return 0;
  return multiple > trip.holds ? trip.seconds / (multiple ** 2 - trip.holds ** 2) : undefined;
}

/** Amps that a device is sized for; undefined when the row does not say, or it is not there. */
function ratingOf(
  { layout, context }: Circuit,
  { part, kind }: { part: number; kind: TripKind },
): number | undefined {
  const { motor } = context.input;
  if (kind === 'breaker-pole') return motor.breaker?.usual;
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
