import { partsOf } from '../layout.ts';
import { admittance, type Circuit, endsOf } from './install.ts';
import { windingIn } from './machine.ts';
import type { Operating } from './operate.ts';

/**
 * What flows in one part, once the volts of the nodes are known?
 *
 * Positive from the part's first node to its second. A winding is a port: its current comes from the
 * motor, plus whatever a bridge across it carries.
 */
export interface Phasor {
  readonly re: number;
  readonly im: number;
}

export function partCurrent(circuit: Circuit, at: Operating, part: number): Phasor {
  const { kind } = circuit.layout.parts[part]!;
  const emf = circuit.emf[part]!;
  const [from, to] = endsOf(circuit, part);
  const re = nodeRe(at, from) - nodeRe(at, to) + emf;
  const im = nodeIm(at, from) - nodeIm(at, to);
  const [yRe, yIm] = admittance(circuit, part, at.reduced.position);
  const through = { re: re * yRe - im * yIm, im: re * yIm + im * yRe };
  if (kind !== 'winding-main' && kind !== 'winding-start') return through;
  const place = part === windingIn(circuit.layout, 'winding-main') ? 0 : 2;
  const { currents } = at.turning;
  return { re: through.re + currents[place]!, im: through.im + currents[place + 1]! };
}

/** Sum over the parts that one clamp is put around. */
export function clampedCurrent(circuit: Circuit, at: Operating, parts: readonly number[]): Phasor {
  let re = 0;
  let im = 0;
  for (const part of parts) {
    const one = partCurrent(circuit, at, part);
    re += one.re;
    im += one.im;
  }
  return { re, im };
}

export const magnitude = ({ re, im }: Phasor): number => Math.hypot(re, im);

/** Watts that the service delivers at its terminals. */
export function deliveredWatts(circuit: Circuit, at: Operating): number {
  let watts = 0;
  for (const part of partsOf(circuit.layout, 'source')) {
    const current = partCurrent(circuit, at, part);
    const [from, to] = endsOf(circuit, part);
    const re = nodeRe(at, to) - nodeRe(at, from);
    const im = nodeIm(at, to) - nodeIm(at, from);
    watts += re * current.re + im * current.im;
  }
  return watts;
}

export const nodeRe = (at: Operating, node: number): number => (node < 0 ? 0 : at.volts.re[node]!);
export const nodeIm = (at: Operating, node: number): number => (node < 0 ? 0 : at.volts.im[node]!);
