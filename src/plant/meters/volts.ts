import { nodeIm, nodeRe } from '../electrical/branch.ts';
import { elementOf } from '../electrical/elements/impedance.ts';
import { passiveImpedance } from '../electrical/elements/passive.ts';
import { assembleLine, type Circuit } from '../electrical/install.ts';
import {
  type Complex,
  difference,
  emptyProbe,
  inSlot,
  nodeVolts,
  type Phasors,
  push,
  type Slot,
} from '../electrical/network.ts';
import type { Operating } from '../electrical/operate.ts';
import { turn, turning } from '../electrical/reduce.ts';

/**
 * What does a voltmeter show?
 *
 * The meter is a low-impedance one and loads what it touches: a dead conductor reads near zero, a
 * sound one does not notice. Its reading is the open volts divided between the meter and the
 * impedance of the network between its probes, motor included.
 */
export function loadedVolts(bench: VoltBench, at: Operating, ends: readonly [number, number]): number {
  const unloaded = Math.hypot(
    nodeRe(at, ends[0]) - nodeRe(at, ends[1]),
    nodeIm(at, ends[0]) - nodeIm(at, ends[1]),
  );
  if (unloaded === 0) return 0;
  const meter = passiveImpedance(elementOf(bench.circuit.context.input, 'voltmeter'), 1).re;
  const [re, im] = impedanceBetween(bench, at, ends);
  return (unloaded * meter) / Math.hypot(meter + re, im);
}

/** What a voltmeter needs of an installation; its network goes into a slot that others use as well. */
export interface VoltBench {
  readonly circuit: Circuit;
  readonly voltSlot: Slot;
}

/** Impedance of the network between two nodes, with the motor as it turns. */
function impedanceBetween(
  { circuit, voltSlot }: VoltBench,
  at: Operating,
  ends: readonly [number, number],
): Complex {
  const { reduced } = at;
  const net = inSlot(voltSlot, reduced, (empty) => assembleLine(circuit, reduced.position, empty));
  const probe = emptyProbe(voltSlot);
  push(probe, ends, [-1, 0]);
  nodeVolts(net, probe);
  return withMotor(at, probe, ends);
}

/** Scratch: how the windings answer to the probe. */
const answer = turning();
const open = new Float64Array(4);

/** The probe's volts with the motor joined on: the windings answer to it as to any source. */
function withMotor({ reduced, end }: Operating, probe: Phasors, ends: readonly [number, number]): Complex {
  [open[0], open[1]] = difference(probe, reduced.mainEnds);
  [open[2], open[3]] = difference(probe, reduced.startEnds);
  turn({ circuit: reduced.circuit, source: reduced.source, openVolts: open }, 1 - end.speed, answer);
  const [re, im] = difference(probe, ends);
  const main = difference(reduced.perMain, ends);
  const start = difference(reduced.perStart, ends);
  const { currents } = answer;
  return [
    re + main[0] * currents[0]! - main[1] * currents[1]! + start[0] * currents[2]! - start[1] * currents[3]!,
    im + main[0] * currents[1]! + main[1] * currents[0]! + start[0] * currents[3]! + start[1] * currents[2]!,
  ];
}
