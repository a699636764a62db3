import { assembleLine, type Circuit, endsOf, pushSources } from './install.ts';
import { windingIn } from './machine.ts';
import { type Fields, fields, torque, turnAt } from './motor.ts';
import {
  type Complex,
  difference,
  type Network,
  nodeVolts,
  type Phasors,
  phasorSets,
  phasors,
  prepare,
  push,
} from './network.ts';
import type { Position } from './positions.ts';

/**
 * What does the network look like from the motor's terminals?
 *
 * One factoring per position of the contacts, with the windings left out: open volts and a two-by-two
 * impedance. After that any slip costs one small solve, and any node's volts one sum, so a whole
 * run-up is cheap.
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
  const { layout } = circuit;
  const sets = phasorSets(layout.size, 3);
  const base = sets[0]!;
  const perMain = sets[1]!;
  const perStart = sets[2]!;
  const mainEnds = endsOf(circuit, windingIn(layout, 'winding-main'));
  const startEnds = endsOf(circuit, windingIn(layout, 'winding-start'));
  assembleLine(circuit, position, net);
  prepare(net);
  pushSources(circuit, position, base);
  push(perMain, mainEnds, [1, 0]);
  push(perStart, startEnds, [1, 0]);
  for (const volts of sets) nodeVolts(net, volts);
  const openVolts = new Float64Array(4);
  const source = new Float64Array(8);
  put(openVolts, 0, difference(base, mainEnds));
  put(openVolts, 2, difference(base, startEnds));
  put(source, 0, difference(perMain, mainEnds));
  put(source, 2, difference(perStart, mainEnds));
  put(source, 4, difference(perMain, startEnds));
  put(source, 6, difference(perStart, startEnds));
  for (let n = 0; n < source.length; n++) source[n] = -source[n]!;
  return { circuit, position, base, perMain, perStart, openVolts, source, mainEnds, startEnds };
}

function put(into: Float64Array, at: number, [re, im]: Complex): void {
  into[at] = re;
  into[at + 1] = im;
}

/** The motor at one slip on a reduced network; reused from slip to slip. */
export interface Turning {
  /** Amperes in main, start and bridged turns, real and imaginary in turn. */
  readonly currents: Float64Array;
  torque: number;
}

export const turning = (): Turning => ({ currents: new Float64Array(6), torque: 0 });

/** Scratch of one slip: the fields are done with once their torque is known. */
const turned: Fields = fields();
const matrix = new Float64Array(18);
const right = new Float64Array(6);

/** Currents and torque at a slip; none where the motor has no model. */
export function turn(
  from: Pick<Reduced, 'circuit' | 'source' | 'openVolts'>,
  slip: number,
  out: Turning,
): void {
  const { machine } = from.circuit;
  out.currents.fill(0);
  out.torque = 0;
  if (machine === undefined) return;
  turnAt(machine, slip, turned);
  const row = machine.shorted === undefined ? 4 : 6;
  matrix.set(turned.z);
  right.fill(0);
  for (let n = 0; n < 4; n++) {
    matrix[n]! += from.source[n]!;
    matrix[row + n]! += from.source[4 + n]!;
    right[n] = from.openVolts[n]!;
  }
  solveSmall(row);
  for (let n = 0; n < row; n++) out.currents[n] = right[n]!;
  out.torque = torque(machine, turned, out.currents);
}

/**
 * Solves the two or three complex equations of `matrix` and `right` in place, `row` numbers a row. No
 * pivoting: every diagonal is the impedance of a loop and carries its own resistance.
 */
function solveSmall(row: number): void {
  for (let k = 0; k < row; k += 2) {
    const diagonal = (k / 2) * row + k;
    const pr = matrix[diagonal]!;
    const pi = matrix[diagonal + 1]!;
    const scale = 1 / (pr * pr + pi * pi);
    for (let i = 0; i < row; i += 2) {
      if (i === k) continue;
      const at = (i / 2) * row + k;
      const fr = (matrix[at]! * pr + matrix[at + 1]! * pi) * scale;
      const fi = (matrix[at + 1]! * pr - matrix[at]! * pi) * scale;
      for (let j = 0; j < row - k; j += 2) {
        const re = matrix[diagonal + j]!;
        const im = matrix[diagonal + j + 1]!;
        matrix[at + j]! -= fr * re - fi * im;
        matrix[at + j + 1]! -= fr * im + fi * re;
      }
      const re = right[k]!;
      const im = right[k + 1]!;
      right[i]! -= fr * re - fi * im;
      right[i + 1]! -= fr * im + fi * re;
    }
  }
  for (let k = 0; k < row; k += 2) divideRight(k, matrix[(k / 2) * row + k]!, matrix[(k / 2) * row + k + 1]!);
}

function divideRight(at: number, pr: number, pi: number): void {
  const scale = 1 / (pr * pr + pi * pi);
  const re = right[at]!;
  const im = right[at + 1]!;
  right[at] = (re * pr + im * pi) * scale;
  right[at + 1] = (im * pr - re * pi) * scale;
}

/** Volts of every node with the motor turning as given. */
export function voltsWhen(from: Reduced, at: Turning): Phasors {
  const { size } = from.circuit.layout;
  const out = phasors(size);
  for (let node = 0; node < size; node++) {
    out.re[node] = realAt(from, at, node);
    out.im[node] = imaginaryAt(from, at, node);
  }
  return out;
}

/**
 * Volts across two nodes with the motor turning as given, as magnitude. Asked on every step of a
 * run-up, so nothing is made on the way.
 */
export function voltsAcross(from: Reduced, at: Turning, [one, other]: readonly [number, number]): number {
  const re = realAt(from, at, one) - realAt(from, at, other);
  const im = imaginaryAt(from, at, one) - imaginaryAt(from, at, other);
  return Math.sqrt(re * re + im * im);
}

function realAt({ base, perMain, perStart }: Reduced, { currents }: Turning, node: number): number {
  if (node < 0) return 0;
  const main = perMain.re[node]! * currents[0]! - perMain.im[node]! * currents[1]!;
  return base.re[node]! + main + perStart.re[node]! * currents[2]! - perStart.im[node]! * currents[3]!;
}

function imaginaryAt({ base, perMain, perStart }: Reduced, { currents }: Turning, node: number): number {
  if (node < 0) return 0;
  const main = perMain.re[node]! * currents[1]! + perMain.im[node]! * currents[0]!;
  return base.im[node]! + main + perStart.re[node]! * currents[3]! + perStart.im[node]! * currents[2]!;
}
