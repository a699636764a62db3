import { assembleOhms, type Circuit, conductance } from '../electrical/install.ts';
import {
  difference,
  emptyProbe,
  inSlot,
  type Network,
  nodeVolts,
  push,
  type Slot,
  stamp,
} from '../electrical/network.ts';
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

/** One installation before an ohmmeter: its network is filled into a slot that others use as well. */
export interface OhmBench {
  readonly circuit: Circuit;
  readonly slot: Slot;
  /** One key for each state of switch and leads, so that readings of one state share one factoring. */
  readonly keys: Map<string, object>;
}

export const ohmBench = (circuit: Circuit, shared: Slot): OhmBench => ({
  circuit,
  slot: shared,
  keys: new Map(),
});

/** Between two nodes, with whatever else joins them; `tied` nodes are twisted together for it. */
export function ohmsBetween(
  bench: OhmBench,
  ends: readonly [number, number],
  at: { readonly tied: readonly number[]; readonly site: ReadingSite },
): PlantReading {
  return reading(resistance(bench, filled(bench, at), ends));
}

/** From nodes tied together to one other node: the insulation of all leads at once. */
export function ohmsTied(
  bench: OhmBench,
  tied: readonly number[],
  at: { readonly to: number; readonly site: ReadingSite },
): PlantReading {
  const net = filled(bench, { tied, site: at.site });
  return reading(resistance(bench, net, [tied[0]!, at.to]));
}

/**
 * Across one part on its own terminals, with its own wires off. A contact is held made by hand
 * (armature pressed, lever made); a current-sensing switch cannot be, so it is read at rest.
 */
export function ohmsAcross(circuit: Circuit, part: number): PlantReading {
  const siemens = conductance(circuit, part, HELD_MADE);
  return reading(siemens > 0 ? 1 / siemens : OVER_RANGE_OHMS);
}

/** The factored network of a state of switch and leads, with any nodes twisted together. */
function filled(
  { circuit, slot, keys }: OhmBench,
  at: { readonly tied: readonly number[]; readonly site: ReadingSite },
): Network {
  const position = restOf(circuit, at.site);
  const name = `${position.calling} ${position.leads} ${position.cooled} ${at.tied.join(' ')}`;
  const key = keys.get(name) ?? {};
  keys.set(name, key);
  return inSlot(slot, key, (net) => {
    assembleOhms(circuit, position, net);
    for (const node of at.tied.slice(1)) stamp(net, [at.tied[0]!, node], [circuit.wire, 0]);
  });
}

/** Everything that moves as it stands on a dead installation; a switch that is held listens to its hold. */
export const restOf = ({ faulted }: Circuit, site: ReadingSite): Position =>
  atRest({ ...site, calling: faulted.command ?? site.calling });

/** One ampere through the meter: the volts are the ohms. */
function resistance({ slot }: OhmBench, net: Network, ends: readonly [number, number]): number {
  const volts = emptyProbe(slot);
  push(volts, ends, [-1, 0]);
  nodeVolts(net, volts);
  return difference(volts, ends)[0];
}
