import { type ComplexSystem, complexSystem, factor, solve } from './complex-lu.ts';

/**
 * What are the voltages of the nodes?
 *
 * Node equations: one unknown a node, sources as the current they would drive into their own
 * impedance, windings left out (they are ports, joined on by superposition). Every node has a path
 * to the reference, so a floating one has a voltage near zero and nothing is ever singular.
 *
 * @source method: The Modified Nodal Approach to Network Analysis (1975), its nodal part
 */
export interface Network {
  readonly system: ComplexSystem;
}

/** Siemens from every node to the reference at line frequency: far below any insulation that matters. */
export const NODE_LEAK = 5e-9;
/** The same for an ohmmeter, which must see an insulation of many megohms through it. */
export const NODE_LEAK_DC = 1e-11;
/**
 * Largest conductance to an ohmmeter, a milliohm: beside anything better the leak of a node would be
 * lost in rounding, and a floating piece of the network would have no volts at all.
 */
export const MOST_SIEMENS_DC = 1e3;
/** The same at line frequency, where the leak is larger. */
export const MOST_SIEMENS = 1e6;

export interface Phasors {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Room for `count` sets of phasors in one piece of memory: many small ones cost more than their use. */
export function phasorSets(size: number, count: number): readonly Phasors[] {
  const room = new ArrayBuffer(16 * size * count);
  return Array.from({ length: count }, (_, place) => ({
    re: new Float64Array(room, 16 * place * size, size),
    im: new Float64Array(room, (16 * place + 8) * size, size),
  }));
}

export const phasors = (size: number): Phasors => phasorSets(size, 1)[0]!;

export function clearPhasors({ re, im }: Phasors): void {
  re.fill(0);
  im.fill(0);
}

/**
 * One network that many installations take turns to fill. Whoever asks with the key that filled it
 * last finds it factored; anyone else fills it anew.
 */
export interface Slot {
  readonly network: Network;
  readonly probe: Phasors;
  key: unknown;
}

export const slot = (size: number): Slot => ({
  network: network(size),
  probe: phasors(size),
  key: undefined,
});

/** The slot's network, filled and factored for a key. */
export function inSlot(at: Slot, key: unknown, fill: (net: Network) => void): Network {
  if (at.key === key) return at.network;
  at.key = undefined;
  fill(at.network);
  prepare(at.network);
  at.key = key;
  return at.network;
}

/** The slot's own phasors, emptied. */
export function emptyProbe(at: Slot): Phasors {
  clearPhasors(at.probe);
  return at.probe;
}

export const network = (size: number): Network => ({ system: complexSystem(size) });

/** Empties the equations but for the leak on each node. */
export function clear({ system }: Network, leak: number): void {
  system.re.fill(0);
  system.im.fill(0);
  for (let node = 0; node < system.size; node++) system.re[node * system.size + node] = leak;
}

/** A complex number: real and imaginary part. */
export type Complex = readonly [re: number, im: number];

/** Puts an admittance between two nodes; a negative number is the reference. */
export function stamp({ system }: Network, [from, to]: readonly [number, number], [re, im]: Complex): void {
  if (from === to) return;
  const { size } = system;
  if (from >= 0) add(system, from * size + from, [re, im]);
  if (to >= 0) add(system, to * size + to, [re, im]);
  if (from < 0 || to < 0) return;
  add(system, from * size + to, [-re, -im]);
  add(system, to * size + from, [-re, -im]);
}

function add(system: ComplexSystem, at: number, [re, im]: Complex): void {
  system.re[at]! += re;
  system.im[at]! += im;
}

export function prepare(net: Network): void {
  factor(net.system);
}

/** Node voltages for currents pushed into the nodes; the currents are replaced by the voltages. */
export function nodeVolts(net: Network, currents: Phasors): void {
  solve(net.system, currents.re, currents.im);
}

/** Takes a current out at the first node and pushes it in at the second. */
export function push(currents: Phasors, [from, to]: readonly [number, number], [re, im]: Complex): void {
  if (to >= 0) {
    currents.re[to]! += re;
    currents.im[to]! += im;
  }
  if (from >= 0) {
    currents.re[from]! -= re;
    currents.im[from]! -= im;
  }
}

/** Volts of one node over another; the reference is at zero. */
export function difference(volts: Phasors, [from, to]: readonly [number, number]): Complex {
  const re = (from < 0 ? 0 : volts.re[from]!) - (to < 0 ? 0 : volts.re[to]!);
  const im = (from < 0 ? 0 : volts.im[from]!) - (to < 0 ? 0 : volts.im[to]!);
  return [re, im];
}
