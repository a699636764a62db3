import type { MotorModel } from '../../schema/motor.ts';
import { LINE_RADIANS } from './line.ts';

/**
 * What does a single-phase motor with a main and a start winding draw, and how hard does it turn?
 *
 * Two windings in space quadrature over a symmetrical cage, sinusoidal field, linear; the rotor is
 * seen as a forward and a backward field. Everything is referred to the main winding. A winding with
 * touching turns gets one more loop: the bridged turns, which share its axis. Leaves out saturation
 * of the iron (a linear proxy on the leakage stands in), transients and heating.
 *
 * @source method: Electric Machinery Fundamentals, 5th ed., ch. 9 (double revolving field); the skin
 *   and leakage proxies are ours
 */
export interface Machine {
  readonly mainOhms: number;
  readonly startOhms: number;
  /** Ohms outside the turns: bad joints, or a break. */
  readonly mainSeries: number;
  readonly startSeries: number;
  readonly turns: number;
  readonly leakage: number;
  readonly startLeakage: number;
  readonly rotorLeakage: number;
  readonly magnetising: number;
  readonly rotor: number;
  readonly ironLoss: number;
  /** Watts lost to friction and stirring at synchronous speed. */
  readonly friction: number;
  readonly skin: number;
  readonly saturation: number;
  /** Newton metres at full load, and the slip there. */
  readonly fullTorque: number;
  readonly fullSlip: number;
  readonly shorted: ShortedTurns | undefined;
}

export interface ShortedTurns {
  readonly winding: 'main' | 'start';
  /** Share of the winding's turns that are bridged. */
  readonly share: number;
  /** Ohms of the touching spot. */
  readonly spot: number;
}

/** Radians a second of a two-pole field at sixty hertz. */
export const SYNCHRONOUS = LINE_RADIANS;
/** Slip closer to synchronism than this is treated as this: the rotor branch is then open anyway. */
const LEAST_SLIP = 1e-7;

/** What an installation and its faults make of a model's windings, at running temperature. */
export interface Windings {
  readonly mainOhms: number;
  readonly startOhms: number;
  readonly mainSeries: number;
  readonly startSeries: number;
  readonly shorted: ShortedTurns | undefined;
}

/** A model's windings with nothing wrong. */
export const soundWindings = (model: MotorModel): Windings => ({
  mainOhms: model.coldMain * model.hotFactor,
  startOhms: model.coldStart * model.hotFactor,
  mainSeries: 0,
  startSeries: 0,
  shorted: undefined,
});

export function machineOf(model: MotorModel, windings: Windings): Machine {
  return {
    mainOhms: windings.mainOhms,
    startOhms: windings.startOhms,
    mainSeries: windings.mainSeries,
    startSeries: windings.startSeries,
    shorted: windings.shorted,
    turns: model.turnsRatio,
    leakage: model.leakage,
    startLeakage: model.turnsRatio ** 2 * model.leakage * model.startLeakageFactor,
    rotorLeakage: model.leakage,
    magnetising: model.magnetising,
    rotor: model.rotor,
    ironLoss: model.ironLoss,
    friction: model.friction,
    skin: model.skinFactor,
    saturation: model.saturationFactor,
    fullTorque: model.fullLoad.torque,
    fullSlip: model.fullLoad.slip,
  };
}

/**
 * Fields and windings at one slip. `z` holds the winding impedances row by row, real and imaginary
 * in turn, in the order main, start, bridged turns.
 */
export interface Fields {
  forwardRe: number;
  forwardIm: number;
  backwardRe: number;
  backwardIm: number;
  /** |Z/Zr|² of each field times its rotor resistance over slip: turns |I|² into air-gap power. */
  forwardGap: number;
  backwardGap: number;
  readonly z: Float64Array;
}

export const fields = (): Fields => ({
  forwardRe: 0,
  forwardIm: 0,
  backwardRe: 0,
  backwardIm: 0,
  forwardGap: 0,
  backwardGap: 0,
  z: new Float64Array(18),
});

const branch = { re: 0, im: 0, gap: 0 };

/** One rotating field: magnetising reactance, iron loss and rotor in parallel. */
function rotorField(machine: Machine, slip: number, saturated: number): void {
  const s = Math.abs(slip) < LEAST_SLIP ? LEAST_SLIP : slip;
  const r = (machine.rotor * (1 + (machine.skin - 1) * Math.sqrt(Math.abs(s)))) / s;
  const x = saturated * machine.rotorLeakage;
  const square = r * r + x * x;
  const g = r / square + 1 / machine.ironLoss;
  const b = -x / square - 1 / machine.magnetising;
  const y = g * g + b * b;
  branch.re = g / y;
  branch.im = -b / y;
  branch.gap = r / (square * y);
}

/** Works out the fields and the winding impedances at a slip, 0 … 2; above 1 the rotor turns backwards. */
export function turnAt(machine: Machine, slip: number, out: Fields): void {
  const saturated = 1 + (machine.saturation - 1) * Math.min(1, Math.abs(slip));
  rotorField(machine, slip, saturated);
  out.forwardRe = branch.re;
  out.forwardIm = branch.im;
  out.forwardGap = branch.gap;
  rotorField(machine, 2 - slip, saturated);
  out.backwardRe = branch.re;
  out.backwardIm = branch.im;
  out.backwardGap = branch.gap;
  fillWindings(machine, saturated, out);
}

function fillWindings(machine: Machine, saturated: number, out: Fields): void {
  const { z } = out;
  const a = machine.turns;
  const sumRe = (out.forwardRe + out.backwardRe) / 2;
  const sumIm = (out.forwardIm + out.backwardIm) / 2;
  const crossRe = (a * (out.forwardRe - out.backwardRe)) / 2;
  const crossIm = (a * (out.forwardIm - out.backwardIm)) / 2;
  const row = machine.shorted === undefined ? 4 : 6;
  z[0] = machine.mainOhms + machine.mainSeries + sumRe;
  z[1] = saturated * machine.leakage + sumIm;
  z[2] = crossIm;
  z[3] = -crossRe;
  z[row] = -crossIm;
  z[row + 1] = crossRe;
  z[row + 2] = machine.startOhms + machine.startSeries + a * a * sumRe;
  z[row + 3] = saturated * machine.startLeakage + a * a * sumIm;
  if (machine.shorted !== undefined) fillShorted(machine, machine.shorted, { saturated, sumRe, sumIm, z });
}

const MAIN = 0;
const START = 1;
const BRIDGED = 2;
/** Place of an entry of the three-by-three winding matrix. */
const cell = (row: number, column: number): number => 2 * (3 * row + column);

/**
 * The loop of bridged turns. Of a winding with leakage X and share k bridged, the two sections have
 * k²X and (1-k)²X, k(1-k)X in common and half of X k(1-k) each for the field that links only one.
 */
function fillShorted(
  machine: Machine,
  { winding, share: k, spot }: ShortedTurns,
  { saturated, sumRe, sumIm, z }: { saturated: number; sumRe: number; sumIm: number; z: Float64Array },
): void {
  const hurt = winding === 'main' ? MAIN : START;
  const turns = winding === 'main' ? 1 : machine.turns;
  const ohms = winding === 'main' ? machine.mainOhms : machine.startOhms;
  const leakage = saturated * (winding === 'main' ? machine.leakage : machine.startLeakage);
  const local = 0.5 * leakage * k * (1 - k);
  const field = turns * turns * k;
  z[cell(hurt, hurt) + 1]! += 2 * local;
  put(z, cell(hurt, BRIDGED), [k * ohms + field * sumRe, leakage * k + local + field * sumIm]);
  put(z, cell(BRIDGED, hurt), [k * ohms + field * sumRe, leakage * k + local + field * sumIm]);
  put(z, cell(BRIDGED, BRIDGED), [
    k * ohms + field * k * sumRe + spot,
    leakage * k * k + local + field * k * sumIm,
  ]);
  const to = cell(1 - hurt, hurt);
  const back = cell(hurt, 1 - hurt);
  put(z, cell(1 - hurt, BRIDGED), [k * z[to]!, k * z[to + 1]!]);
  put(z, cell(BRIDGED, 1 - hurt), [k * z[back]!, k * z[back + 1]!]);
}

function put(z: Float64Array, at: number, [re, im]: readonly [number, number]): void {
  z[at] = re;
  z[at + 1] = im;
}

/**
 * Air-gap torque for the currents in the windings, newton metres, positive in the direction that a
 * leading start current sets.
 */
export function torque(machine: Machine, at: Fields, currents: Float64Array): number {
  const { shorted, turns: a } = machine;
  let mainRe = currents[0]!;
  let mainIm = currents[1]!;
  let startRe = currents[2]!;
  let startIm = currents[3]!;
  if (shorted !== undefined) {
    const share = shorted.share;
    if (shorted.winding === 'main') {
      mainRe += share * currents[4]!;
      mainIm += share * currents[5]!;
    } else {
      startRe += share * currents[4]!;
      startIm += share * currents[5]!;
    }
  }
  const forwardRe = (mainRe + a * startIm) / 2;
  const forwardIm = (mainIm - a * startRe) / 2;
  const backwardRe = (mainRe - a * startIm) / 2;
  const backwardIm = (mainIm + a * startRe) / 2;
  const forward = 2 * (forwardRe * forwardRe + forwardIm * forwardIm) * at.forwardGap;
  const backward = 2 * (backwardRe * backwardRe + backwardIm * backwardIm) * at.backwardGap;
  return (forward - backward) / SYNCHRONOUS;
}

/** Torque that the pump and the motor's own friction ask for at a speed, as a share of synchronous. */
export function loadTorque(machine: Machine, speed: number, load: number): number {
  const pump = machine.fullTorque * load * (speed / (1 - machine.fullSlip)) ** 2;
  return Math.sign(speed) * pump + (machine.friction / SYNCHRONOUS) * speed;
}
