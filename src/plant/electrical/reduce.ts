import { partsOf } from '../layout.ts';
import { assembleLine, type Circuit, endsOf, pushSources } from './install.ts';
import { type Fields, fields, type Machine, torque, turnAt } from './motor.ts';
import { type Network, nodeVolts, type Phasors, phasorSets, phasors, prepare, push } from './network.ts';
import type { Position } from './positions.ts';

/**
 * What does the network look like from the motor's terminals?
 *
 * One factoring per position of the contacts, with the windings left out: open volts and a two-by-two
 * impedance (Thévenin). After that any slip costs one small solve, and any node's volts one sum, so a
 * whole run-up is cheap.
 *
 * @source law: Thévenin's theorem for two ports
 */
export interface Reduced {
  readonly circuit: Circuit;
  readonly position: Position;
  /** Volts of the nodes with the windings open. */
  readonly base: Phasors;
  /** Volts of the nodes per ampere through the main and the start winding. */
  readonly perMain: Phasors;
  readonly perStart: Phasors;
  readonly openVolts: Float64Array;
  /** Two by two, real and imaginary in turn. */
  readonly source: Float64Array;
  readonly mainEnds: readonly [number, number];
  readonly startEnds: readonly [number, number];
}

/** @throws when the installation has no main or no start winding */
export function reduce(circuit: Circuit, position: Position, net: Network): Reduced {
  const { size } = circuit.layout;
  const sets = phasorSets(size, 3);
  const base = sets[0]!;
  const perMain = sets[1]!;
  const perStart = sets[2]!;
  assembleLine(circuit, position, net);
  prepare(net);
  pushSources(circuit, position, base);
  nodeVolts(net, base);
  const mainEnds = endsOf(circuit, windingOf(circuit, 'winding-main'));
  const startEnds = endsOf(circuit, windingOf(circuit, 'winding-start'));
  perAmpere(net, mainEnds, perMain);
  perAmpere(net, startEnds, perStart);
  const openVolts = new Float64Array(4);
  const source = new Float64Array(8);
  across(base, mainEnds, openVolts, 0);
  across(base, startEnds, openVolts, 2);
  across(perMain, mainEnds, source, 0);
  across(perStart, mainEnds, source, 2);
  across(perMain, startEnds, source, 4);
  across(perStart, startEnds, source, 6);
  for (let n = 0; n < 8; n++) source[n] = -source[n]!;
  return { circuit, position, base, perMain, perStart, openVolts, source, mainEnds, startEnds };
}

export function windingOf(circuit: Circuit, kind: 'winding-main' | 'winding-start'): number {
  const part = partsOf(circuit.layout, kind)[0];
  if (part === undefined) throw new Error(`plant: the installation has no ${kind}; add a motor piece`);
  return part;
}

function perAmpere(net: Network, ends: readonly [number, number], volts: Phasors): void {
  push(volts, ends, 1);
  nodeVolts(net, volts);
}

function across(volts: Phasors, [from, to]: readonly [number, number], out: Float64Array, at: number): void {
  out[at] = (from < 0 ? 0 : volts.re[from]!) - (to < 0 ? 0 : volts.re[to]!);
  out[at + 1] = (from < 0 ? 0 : volts.im[from]!) - (to < 0 ? 0 : volts.im[to]!);
}

/** The motor at one slip on a reduced network; reused from slip to slip. */
export interface Turning {
  readonly fields: Fields;
  /** Amperes in main, start and bridged turns, real and imaginary in turn. */
  readonly currents: Float64Array;
  torque: number;
}

export const turning = (): Turning => ({ fields: fields(), currents: new Float64Array(6), torque: 0 });

const matrix = new Float64Array(18);
const right = new Float64Array(6);

/** Currents and torque at a slip. */
export function turn(
  machine: Machine,
  from: Pick<Reduced, 'source' | 'openVolts'>,
  slip: number,
  out: Turning,
): void {
  turnAt(machine, slip, out.fields);
  const size = machine.shorted === undefined ? 2 : 3;
  matrix.set(out.fields.z);
  const row = 2 * size;
  for (let n = 0; n < 4; n++) {
    matrix[n]! += from.source[n]!;
    matrix[row + n]! += from.source[4 + n]!;
    right[n] = from.openVolts[n]!;
  }
  right[4] = 0;
  right[5] = 0;
  solveSmall(matrix, right, size);
  out.currents.fill(0);
  for (let n = 0; n < row; n++) out.currents[n] = right[n]!;
  out.torque = torque(machine, out.fields, out.currents);
}

/**
 * Solves two or three complex equations in place. No pivoting: every diagonal is the impedance of a
 * loop and carries its own resistance.
 */
function solveSmall(a: Float64Array, b: Float64Array, size: number): void {
  const row = 2 * size;
  for (let k = 0; k < size; k++) {
    const pr = a[k * row + 2 * k]!;
    const pi = a[k * row + 2 * k + 1]!;
    const scale = 1 / (pr * pr + pi * pi);
    for (let i = 0; i < size; i++) {
      if (i === k) continue;
      const at = i * row + 2 * k;
      const fr = (a[at]! * pr + a[at + 1]! * pi) * scale;
      const fi = (a[at + 1]! * pr - a[at]! * pi) * scale;
      for (let j = k; j < size; j++) subtract(a, i * row + 2 * j, k * row + 2 * j, fr, fi);
      subtract(b, 2 * i, 2 * k, fr, fi);
    }
  }
  for (let k = 0; k < size; k++) divide(b, 2 * k, a[k * row + 2 * k]!, a[k * row + 2 * k + 1]!);
}

function subtract(a: Float64Array, to: number, from: number, fr: number, fi: number): void {
  const re = a[from]!;
  const im = a[from + 1]!;
  a[to]! -= fr * re - fi * im;
  a[to + 1]! -= fr * im + fi * re;
}

function divide(b: Float64Array, at: number, pr: number, pi: number): void {
  const scale = 1 / (pr * pr + pi * pi);
  const re = b[at]!;
  const im = b[at + 1]!;
  b[at] = (re * pr + im * pi) * scale;
  b[at + 1] = (im * pr - re * pi) * scale;
}

/** Volts of every node with the motor turning as given. */
export function voltsWhen(from: Reduced, at: Turning): Phasors {
  const { size } = from.circuit.layout;
  const out = phasors(size);
  const mainRe = at.currents[0]!;
  const mainIm = at.currents[1]!;
  const startRe = at.currents[2]!;
  const startIm = at.currents[3]!;
  for (let node = 0; node < size; node++) {
    const mr = from.perMain.re[node]!;
    const mi = from.perMain.im[node]!;
    const sr = from.perStart.re[node]!;
    const si = from.perStart.im[node]!;
    out.re[node] = from.base.re[node]! + mr * mainRe - mi * mainIm + sr * startRe - si * startIm;
    out.im[node] = from.base.im[node]! + mr * mainIm + mi * mainRe + sr * startIm + si * startRe;
  }
  return out;
}

/** Volts across two nodes with the motor turning as given, as magnitude. */
export function voltsAcross(from: Reduced, at: Turning, [one, other]: readonly [number, number]): number {
  const re = part(from, at, one, 're') - part(from, at, other, 're');
  const im = part(from, at, one, 'im') - part(from, at, other, 'im');
  return Math.hypot(re, im);
}

function part(from: Reduced, { currents }: Turning, node: number, which: 're' | 'im'): number {
  if (node < 0) return 0;
  const mainRe = currents[0]!;
  const mainIm = currents[1]!;
  const startRe = currents[2]!;
  const startIm = currents[3]!;
  const mr = from.perMain.re[node]!;
  const mi = from.perMain.im[node]!;
  const sr = from.perStart.re[node]!;
  const si = from.perStart.im[node]!;
  return which === 're'
    ? from.base.re[node]! + mr * mainRe - mi * mainIm + sr * startRe - si * startIm
    : from.base.im[node]! + mr * mainIm + mi * mainRe + sr * startIm + si * startRe;
}
