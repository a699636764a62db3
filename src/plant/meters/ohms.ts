import { assembleOhms, type Circuit, conductance, conduction } from '../electrical/install.ts';
import { type Network, network, nodeVolts, phasors, prepare, push, stamp } from '../electrical/network.ts';
import { atRest, isSensing, type Position } from '../electrical/positions.ts';
import type { PlantReading, ReadingSite } from '../types.ts';

/**
 * What does an ohmmeter or an insulation tester show?
 *
 * The installation is dead and locked off, so the sources are gone and everything that moves is at
 * rest. Whatever is still connected is measured along: all parallel paths are in the reading.
 */

/** Ohms that stand for "nothing conducts": above the top of every instrument. */
export const OVER_RANGE_OHMS = 1e11;

const reading = (ohms: number): PlantReading => ({
  kind: 'value',
  value: Math.min(OVER_RANGE_OHMS, Math.max(0, ohms)),
  regime: 'static',
});

/** Prepared ohmmeter networks of one installation, one for each state of switch and leads. */
export interface OhmBench {
  readonly circuit: Circuit;
  readonly prepared: Map<string, Network>;
}

export const ohmBench = (circuit: Circuit): OhmBench => ({ circuit, prepared: new Map() });

/** Between two nodes, with whatever else joins them. */
export function ohmsBetween(
  bench: OhmBench,
  ends: readonly [number, number],
  site: ReadingSite,
): PlantReading {
  return reading(resistance(preparedFor(bench, site), ends));
}

/** From nodes tied together to one other node: the insulation of all leads at once. */
export function ohmsTied(
  bench: OhmBench,
  tied: readonly number[],
  at: { to: number; site: ReadingSite },
): PlantReading {
  const { circuit } = bench;
  const net = network(circuit.layout.size);
  assembleOhms(circuit, restOf(circuit, at.site), net);
  const first = tied[0]!;
  for (const node of tied.slice(1)) stamp(net, [first, node], circuit.wire, 0);
  prepare(net);
  return reading(resistance(net, [first, at.to]));
}

/**
 * Across one part on its own terminals, with its own wires off. A contact is held made by hand
 * (armature pressed, lever made); a current-sensing switch cannot be, so it is read at rest.
 */
export function ohmsAcross(circuit: Circuit, part: number): PlantReading {
  const { kind } = circuit.layout.parts[part]!;
  const pressed: Position = { ...atRest(true, 'connected'), contactor: true };
  const siemens = conductance(circuit, part, isSensing(kind) ? atRest(true, 'connected') : pressed);
  return reading(siemens > 0 ? 1 / siemens : OVER_RANGE_OHMS);
}

/** Whether a part conducts when held made: what a look at it would call whole. */
export function canConduct(circuit: Circuit, part: number): boolean {
  const pressed: Position = { ...atRest(true, 'connected'), contactor: true, sense: true };
  const how = conduction(circuit, part, pressed);
  return how === 'made' || how === 'bridged';
}

function preparedFor(bench: OhmBench, site: ReadingSite): Network {
  const position = restOf(bench.circuit, site);
  const key = `${position.calling} ${position.leads}`;
  const known = bench.prepared.get(key);
  if (known !== undefined) return known;
  const net = network(bench.circuit.layout.size);
  assembleOhms(bench.circuit, position, net);
  prepare(net);
  bench.prepared.set(key, net);
  return net;
}

const restOf = ({ faulted }: Circuit, site: ReadingSite): Position =>
  atRest(faulted.command ?? site.calling, site.leads);

/** One ampere through the meter: the volts are the ohms. */
function resistance(net: Network, ends: readonly [number, number]): number {
  const volts = phasors(net.system.size);
  push(volts, ends, -1);
  nodeVolts(net, volts);
  const at = (node: number): number => (node < 0 ? 0 : volts.re[node]!);
  return at(ends[0]) - at(ends[1]);
}
