import { nodeIm, nodeRe } from '../electrical/branch.ts';
import { elementOf } from '../electrical/elements/impedance.ts';
import { passiveImpedance } from '../electrical/elements/passive.ts';
import { assembleLine, type Circuit } from '../electrical/install.ts';
import type { Machine } from '../electrical/motor.ts';
import { emptyProbe, inSlot, nodeVolts, type Phasors, push, type Slot } from '../electrical/network.ts';
import type { Operating } from '../electrical/operate.ts';
import { type Reduced, turn, turning, voltsWhen } from '../electrical/reduce.ts';

/**
 * What does a voltmeter show?
 *
 * The meter is a low-impedance one and loads what it touches: a dead conductor reads near zero, a
 * sound one does not notice. Its reading is the open volts divided between the meter and the
 * impedance of the network between its probes, motor included.
 */
export function loadedVolts(bench: VoltBench, at: Operating, ends: readonly [number, number]): number {
  const open = Math.hypot(
    nodeRe(at, ends[0]) - nodeRe(at, ends[1]),
    nodeIm(at, ends[0]) - nodeIm(at, ends[1]),
  );
  if (open === 0) return 0;
  const meter = passiveImpedance(elementOf(bench.circuit.context.input, 'voltmeter'), 1).re;
  const [re, im] = impedanceBetween(bench, at, ends);
  return (open * meter) / Math.hypot(meter + re, im);
}

/** What a voltmeter needs of an installation; its network goes into a slot that others use as well. */
export interface VoltBench {
  readonly circuit: Circuit;
  readonly machine: Machine | undefined;
  readonly voltSlot: Slot;
}

/** Impedance of the network between two nodes, with the motor as it turns. */
function impedanceBetween(
  { circuit, machine, voltSlot }: VoltBench,
  at: Operating,
  ends: readonly [number, number],
): readonly [number, number] {
  const { reduced } = at;
  const net = inSlot(voltSlot, reduced, (empty) => assembleLine(circuit, reduced.position, empty));
  const probe = emptyProbe(voltSlot);
  push(probe, ends, -1);
  nodeVolts(net, probe);
  return difference(machine === undefined ? probe : withMotor(machine, at, probe), ends);
}

/** The probe's volts with the motor joined on: the windings answer to it as to any source. */
function withMotor(machine: Machine, { reduced, end }: Operating, probe: Phasors): Phasors {
  const openVolts = new Float64Array([
    ...difference(probe, reduced.mainEnds),
    ...difference(probe, reduced.startEnds),
  ]);
  const driven: Reduced = { ...reduced, base: probe, openVolts };
  const at = turning();
  turn(machine, driven, 1 - end.speed, at);
  return voltsWhen(driven, at);
}

function difference(volts: Phasors, [from, to]: readonly [number, number]): readonly [number, number] {
  const re = (from < 0 ? 0 : volts.re[from]!) - (to < 0 ? 0 : volts.re[to]!);
  const im = (from < 0 ? 0 : volts.im[from]!) - (to < 0 ? 0 : volts.im[to]!);
  return [re, im];
}
