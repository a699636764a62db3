import { assembleOhms, type Circuit, conductance } from '../electrical/install.ts';
import { type Network, network, nodeVolts, phasors, prepare, push, stamp } from '../electrical/network.ts';
import { atRest, HELD_MADE, type Position } from '../electrical/positions.ts';
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

/** Between two nodes, with whatever else joins them; `tied` nodes are twisted together for it. */
export function ohmsBetween(
  bench: OhmBench,
  ends: readonly [number, number],
  at: { readonly tied: readonly number[]; readonly site: ReadingSite },
): PlantReading {
  const net = at.tied.length > 0 ? tiedNet(bench.circuit, at) : preparedFor(bench, at.site);
  return reading(resistance(net, ends));
}

/** From nodes tied together to one other node: the insulation of all leads at once. */
export function ohmsTied(
  { circuit }: OhmBench,
  tied: readonly number[],
  at: { readonly to: number; readonly site: ReadingSite },
): PlantReading {
  return reading(resistance(tiedNet(circuit, { tied, site: at.site }), [tied[0]!, at.to]));
}

/** An ohmmeter network with some nodes twisted together for the reading. */
function tiedNet(
  circuit: Circuit,
  at: { readonly tied: readonly number[]; readonly site: ReadingSite },
): Network {
  const net = network(circuit.layout.size);
  assembleOhms(circuit, restOf(circuit, at.site), net);
  for (const node of at.tied.slice(1)) stamp(net, [at.tied[0]!, node], circuit.wire, 0);
  prepare(net);
  return net;
}

/**
 * Across one part on its own terminals, with its own wires off. A contact is held made by hand
 * (armature pressed, lever made); a current-sensing switch cannot be, so it is read at rest.
 */
export function ohmsAcross(circuit: Circuit, part: number): PlantReading {
  const siemens = conductance(circuit, part, HELD_MADE);
  return reading(siemens > 0 ? 1 / siemens : OVER_RANGE_OHMS);
}

function preparedFor(bench: OhmBench, site: ReadingSite): Network {
  const position = restOf(bench.circuit, site);
  const key = `${position.calling} ${position.leads} ${position.cooled}`;
  const known = bench.prepared.get(key);
  if (known !== undefined) return known;
  const net = network(bench.circuit.layout.size);
  assembleOhms(bench.circuit, position, net);
  prepare(net);
  bench.prepared.set(key, net);
  return net;
}

const restOf = ({ faulted }: Circuit, site: ReadingSite): Position =>
  atRest({ ...site, calling: faulted.command ?? site.calling });

/** One ampere through the meter: the volts are the ohms. */
function resistance(net: Network, ends: readonly [number, number]): number {
  const volts = phasors(net.system.size);
  push(volts, ends, -1);
  nodeVolts(net, volts);
  const at = (node: number): number => (node < 0 ? 0 : volts.re[node]!);
  return at(ends[0]) - at(ends[1]);
}
