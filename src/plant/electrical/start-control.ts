import type { Motor, MotorModel } from '../../schema/motor.ts';
import { partsOf } from '../layout.ts';
import { elementOf, ratingShare } from './elements/impedance.ts';
import { admittance, type Circuit, conduction, endsOf } from './install.ts';
import { fields, machineOf, soundWindings, turnAt } from './motor.ts';
import { type Reduced, type Turning, voltsAcross } from './reduce.ts';

/**
 * Who lets the start branch in and out, and at what?
 *
 * A potential relay is made at rest; the volts of its coil rise with speed, open it at its pick-up
 * and keep it open above its drop-out. A current-sensing switch is apart at rest; current at
 * power-up fires it and speed lets it go for good. Without either the branch is always in.
 */
export type StartControl =
  | {
      readonly kind: 'potential';
      readonly coil: number;
      readonly pickUp: number;
      readonly dropOut: number;
      readonly spread: number;
    }
  | {
      readonly kind: 'sensing';
      /** Part whose current fires it; a winding part means the current of that winding. */
      readonly senses: number;
      readonly fireAmps: number;
      readonly releaseSpeed: number;
      readonly spread: number;
    }
  | { readonly kind: 'none' };

export function startControlOf(circuit: Circuit): StartControl {
  const coil = partsOf(circuit.layout, 'relay-coil')[0];
  if (coil !== undefined) return potential(circuit, coil);
  const sensor = partsOf(circuit.layout, 'sense-coil')[0];
  if (sensor !== undefined) return sensing(circuit, sensor, 'sense-switch');
  if (partsOf(circuit.layout, 'start-switch-inside').length === 0) return { kind: 'none' };
  return sensing(circuit, partsOf(circuit.layout, 'winding-main')[0]!, 'start-switch-inside');
}

function potential(circuit: Circuit, coil: number): StartControl {
  const element = elementOf(circuit.context.input, 'relay-coil');
  const share = ratingShare(element, circuit.context.input);
  return {
    kind: 'potential',
    coil,
    pickUp: share * constant(element.pickUp, 'relay-coil', 'pickUp'),
    dropOut: share * constant(element.dropOut, 'relay-coil', 'dropOut'),
    spread: share * constant(element.pickUpSpread, 'relay-coil', 'pickUpSpread'),
  };
}

function sensing(
  circuit: Circuit,
  senses: number,
  kind: 'sense-switch' | 'start-switch-inside',
): StartControl {
  const { input } = circuit.context;
  const element = elementOf(input, kind);
  const fires = kind === 'sense-switch' ? elementOf(input, 'sense-coil') : element;
  return {
    kind: 'sensing',
    senses,
    fireAmps: constant(fires.fireShare, fires.id, 'fireShare') * fullLoadAmps(input.motor, input.model),
    releaseSpeed: constant(element.releaseSpeed, kind, 'releaseSpeed'),
    spread: constant(element.releaseSpread, kind, 'releaseSpread'),
  };
}

/** @throws when content leaves out a constant that the physics of the kind needs */
export function constant(value: number | undefined, kind: string, name: string): number {
  if (value === undefined)
    throw new Error(`plant: element ${kind} has no ${name}; add it to content/elements/${kind}.json`);
  return value;
}

/** Amps of the common lead at full load: the published row first, else the model at rated volts. */
export function fullLoadAmps(motor: Motor, model: MotorModel | undefined): number {
  const amps = motor.fullLoad?.amps ?? motor.serviceFactorLoad?.amps;
  if (amps !== undefined) return 'line' in amps ? amps.line : amps.yellow;
  if (model === undefined) return 0;
  const at = fields();
  turnAt(machineOf(model, soundWindings(model)), model.fullLoad.slip, at);
  return motor.volts / Math.hypot(at.z[0]!, at.z[1]!);
}

/** Volts that work a coil: those across its own turns, none when it is open or bridged. */
export function coilVolts(from: Reduced, at: Turning, coil: number): number {
  const { circuit, position } = from;
  if (conduction(circuit, coil, position) !== 'made') return 0;
  const condition = circuit.faulted.parts[coil]!;
  const across = voltsAcross(from, at, endsOf(circuit, coil));
  if (condition.seriesOhms === 0) return across;
  const [re, im] = admittance(circuit, coil, position);
  const square = re * re + im * im;
  const own = Math.hypot(re / square - condition.seriesOhms, im / square);
  return across * own * Math.sqrt(square);
}

/** Amps that a current-sensing switch feels. */
export function sensedAmps(from: Reduced, at: Turning, part: number): number {
  const { circuit, position } = from;
  if (circuit.layout.parts[part]!.kind === 'winding-main')
    return Math.hypot(at.currents[0]!, at.currents[1]!);
  if (conduction(circuit, part, position) !== 'made') return 0;
  const [re, im] = admittance(circuit, part, position);
  return voltsAcross(from, at, endsOf(circuit, part)) * Math.hypot(re, im);
}
