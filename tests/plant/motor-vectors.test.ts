import { describe, expect, test } from 'vitest';
import {
  fields,
  type Machine,
  machineOf,
  SYNCHRONOUS,
  soundWindings,
  torque,
  turnAt,
} from '../../src/plant/electrical/motor.ts';
import { models } from './support/inputs.ts';

/**
 * Motor alone: 230 V across black and yellow, red fed from black through the run capacitor (series
 * resistance 0.2 % of its reactance) or open.
 *
 * Values: an independent program of the same equations, printed to these digits (derived).
 */
interface Vector {
  readonly motor: string;
  readonly slip: number;
  readonly microfarads: number | undefined;
  readonly forward: readonly [number, number];
  readonly backward: readonly [number, number];
  readonly main: readonly [amps: number, degrees: number];
  readonly start: readonly [amps: number, degrees: number];
  readonly line: readonly [amps: number, degrees: number];
  readonly redVolts: number;
  readonly torque: number;
  readonly mechanical: number;
  readonly input: number;
}

const VECTORS: readonly Vector[] = [
  {
    motor: '3-wire-1.5hp-230v-start-and-run',
    slip: 0.03,
    microfarads: 10,
    forward: [20.41796, 23.51078],
    backward: [0.84345, 1.55052],
    main: [10.7081, -47.719],
    start: [1.3093, 40.379],
    line: [10.8309, -40.78],
    redVolts: 264.152,
    torque: 3.74032,
    mechanical: 1367.764,
    input: 1886.319,
  },
  {
    motor: '3-wire-1.5hp-230v-start-and-run',
    slip: 0.03,
    microfarads: undefined,
    forward: [20.41796, 23.51078],
    backward: [0.84345, 1.55052],
    main: [12.0781, -47.89],
    start: [0, 0],
    line: [12.0781, -47.89],
    redVolts: 240.743,
    torque: 3.42349,
    mechanical: 1251.906,
    input: 1862.777,
  },
  {
    motor: '3-wire-3hp-230v-start-and-run',
    slip: 0.03,
    microfarads: 45,
    forward: [14.64019, 15.68202],
    backward: [0.60964, 1.03824],
    main: [11.5147, -41.603],
    start: [6.1331, 35.184],
    line: [14.2298, -16.794],
    redVolts: 295.813,
    torque: 6.58421,
    mechanical: 2407.722,
    input: 3133.257,
  },
  {
    motor: '3-wire-3hp-230v-start-and-run',
    slip: 0.5,
    microfarads: 45,
    forward: [2.13159, 1.07836],
    backward: [0.78177, 0.95086],
    main: [65.1819, -34.422],
    start: [3.7089, 68.278],
    line: [64.4682, -31.204],
    redVolts: 84.832,
    torque: 9.93399,
    mechanical: 1872.514,
    input: 12682.492,
  },
  {
    motor: '3-wire-3hp-230v-start-and-run',
    slip: 1,
    microfarads: 45,
    forward: [1.1353, 0.87097],
    backward: [1.1353, 0.87097],
    main: [74.8441, -34.204],
    start: [4.0714, 82.884],
    line: [73.0801, -31.361],
    redVolts: 30.38,
    torque: 2.11868,
    mechanical: 0,
    input: 14352.847,
  },
];

interface Complex {
  readonly re: number;
  readonly im: number;
}
const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
const over = (a: Complex, b: Complex): Complex => {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
};
const size = ({ re, im }: Complex): number => Math.hypot(re, im);
const degrees = ({ re, im }: Complex): number => (Math.atan2(im, re) * 180) / Math.PI;

/** The two winding equations solved by hand, so that the test does not lean on the network. */
function motorAlone(machine: Machine, slip: number, microfarads: number | undefined) {
  const at = fields();
  turnAt(machine, slip, at);
  const z = (n: number): Complex => ({ re: at.z[2 * n]!, im: at.z[2 * n + 1]! });
  const volts = { re: 230, im: 0 };
  const reactance = microfarads === undefined ? 0 : 1e6 / (2 * Math.PI * 60 * microfarads);
  const series = microfarads === undefined ? { re: 1e9, im: 0 } : { re: 0.002 * reactance, im: -reactance };
  const own = plus(z(3), series);
  const determinant = minus(times(z(0), own), times(z(1), z(2)));
  const main = over(times(volts, minus(own, z(1))), determinant);
  const start = over(times(volts, minus(z(0), z(2))), determinant);
  const red = plus(times(z(2), main), times(z(3), start));
  const currents = new Float64Array([main.re, main.im, start.re, start.im, 0, 0]);
  return { at, main, start, line: plus(main, start), red, torque: torque(machine, at, currents) };
}

describe.each(VECTORS)('$motor at slip $slip with $microfarads µF', (vector) => {
  const model = models[vector.motor]!;
  const machine = machineOf(model, soundWindings(model));
  const got = motorAlone(machine, vector.slip, vector.microfarads);

  test('fields', () => {
    expect(got.at.forwardRe).toBeCloseTo(vector.forward[0], 4);
    expect(got.at.forwardIm).toBeCloseTo(vector.forward[1], 4);
    expect(got.at.backwardRe).toBeCloseTo(vector.backward[0], 4);
    expect(got.at.backwardIm).toBeCloseTo(vector.backward[1], 4);
  });

  test('currents', () => {
    expect(size(got.main)).toBeCloseTo(vector.main[0], 3);
    expect(degrees(got.main)).toBeCloseTo(vector.main[1], 2);
    expect(size(got.start)).toBeCloseTo(vector.start[0], 3);
    if (vector.start[0] > 0) expect(degrees(got.start)).toBeCloseTo(vector.start[1], 2);
    expect(size(got.line)).toBeCloseTo(vector.line[0], 3);
    expect(degrees(got.line)).toBeCloseTo(vector.line[1], 2);
  });

  test('volts, torque and power', () => {
    expect(size(got.red)).toBeCloseTo(vector.redVolts, 2);
    expect(got.torque).toBeCloseTo(vector.torque, 4);
    expect(230 * got.line.re).toBeCloseTo(vector.input, 2);
  });

  test('mechanical power is torque times speed', () => {
    const mechanical = got.torque * (1 - vector.slip) * SYNCHRONOUS;
    expect(Math.abs(mechanical - vector.mechanical)).toBeLessThan(0.002);
  });
});
