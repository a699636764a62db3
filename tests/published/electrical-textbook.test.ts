import { describe, expect, test } from 'vitest';
import { fields, type Machine, torque, turnAt } from '../../src/plant/electrical/motor.ts';

/** Worked problems of textbooks, solved with the plant's own motor. */
const LINEAR = {
  mainSeries: 0,
  startSeries: 0,
  ironLoss: Infinity,
  friction: 0,
  skin: 1,
  saturation: 1,
  fullTorque: 1,
  fullSlip: 0.05,
  shorted: undefined,
} satisfies Partial<Machine>;

interface Complex {
  readonly re: number;
  readonly im: number;
}
const polar = ({ re, im }: Complex) => ({
  size: Math.hypot(re, im),
  degrees: (Math.atan2(im, re) * 180) / Math.PI,
});
const over = (a: Complex, b: Complex): Complex => {
  const square = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
};
const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});
const minus = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im });
const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

/** One winding on a line of `volts`: current, power in, and the two air-gap powers. */
function single(machine: Machine, volts: number, slip: number) {
  const at = fields();
  turnAt(machine, slip, at);
  const current = over({ re: volts, im: 0 }, { re: at.z[0]!, im: at.z[1]! });
  const half = (current.re ** 2 + current.im ** 2) / 4;
  return {
    at,
    current,
    input: volts * current.re,
    forward: 2 * half * at.forwardGap,
    backward: 2 * half * at.backwardGap,
    gap: torque(machine, at, new Float64Array([current.re, current.im, 0, 0, 0, 0])) * 2 * Math.PI * 60,
  };
}

/**
 * Electric Machinery Fundamentals, 5th ed., instructor's manual, problem 9-1, pp. 276-277
 * (seen): 120 V, 60 Hz, four poles, slip 0.05, rotational losses 51 W. The printed input power,
 * 403.8 W, comes from a rounded angle; the currents and impedances it prints give 403.5 W.
 */
describe('a split-phase motor on its main winding', () => {
  const machine: Machine = {
    ...LINEAR,
    mainOhms: 2,
    startOhms: 1,
    turns: 1,
    leakage: 2.56,
    startLeakage: 1,
    rotorLeakage: 2.56,
    magnetising: 60.5,
    rotor: 2.8,
  };
  const got = single(machine, 120, 0.05);

  test('forward and backward impedance: 28.82 + j28.05, 1.321 + j2.486', () => {
    expect(got.at.forwardRe).toBeCloseTo(28.82, 2);
    expect(got.at.forwardIm).toBeCloseTo(28.05, 2);
    expect(got.at.backwardRe).toBeCloseTo(1.321, 3);
    expect(got.at.backwardIm).toBeCloseTo(2.486, 3);
  });

  test('current 4.862 A at -46.2 degrees, input 403.5 W', () => {
    expect(polar(got.current).size).toBeCloseTo(4.862, 3);
    expect(polar(got.current).degrees).toBeCloseTo(-46.2, 1);
    expect(got.input).toBeCloseTo(403.5, 1);
  });

  test('air-gap powers 340.6 and 15.6 W, torque 1.72 N.m, output 257 W', () => {
    expect(got.forward).toBeCloseTo(340.6, 1);
    expect(got.backward).toBeCloseTo(15.6, 1);
    const synchronous = (2 * Math.PI * 1800) / 60;
    expect(got.gap / synchronous).toBeCloseTo(1.72, 2);
    expect(Math.abs(0.95 * got.gap - 51 - 257)).toBeLessThan(1);
  });
});

/** Electric Machinery, 6th ed., ch. 9, quarter-horsepower motor (memory). */
test('a quarter-horsepower motor: 3.6 A, power factor 0.62, 147 W out, 60 %', () => {
  const machine: Machine = {
    ...LINEAR,
    mainOhms: 2.02,
    startOhms: 1,
    turns: 1,
    leakage: 2.79,
    startLeakage: 1,
    rotorLeakage: 2.12,
    magnetising: 66.8,
    rotor: 4.12,
  };
  const got = single(machine, 110, 0.05);
  const output = 0.95 * got.gap - 37;
  expect(polar(got.current).size).toBeCloseTo(3.6, 1);
  expect(Math.cos((polar(got.current).degrees * Math.PI) / 180)).toBeCloseTo(0.62, 2);
  expect(output).toBeCloseTo(147, 0);
  expect(output / got.input).toBeCloseTo(0.6, 2);
});

/**
 * Electric Machines (university text), example 10.5 (equations seen; run by us): 220 V, 50 Hz,
 * 4 poles, capacitor in series with the auxiliary winding, symmetrical-component method.
 */
describe('a capacitor motor on two windings', () => {
  const machine: Machine = {
    ...LINEAR,
    mainOhms: 4.2,
    startOhms: 5.16,
    turns: 1.05,
    leakage: 11.3,
    startLeakage: 12.1,
    rotorLeakage: 7.2,
    magnetising: 250,
    rotor: 7.48,
  };

  test.each([
    { slip: 1, microfarads: 70, torque: 6.2831, line: 8.957, main: 10.1565, auxiliary: 7.7041 },
    { slip: 0.04, microfarads: 70, torque: 4.2045, line: 19.1195, main: 10.2016, auxiliary: 13.1271 },
    { slip: 0.04, microfarads: 15, torque: 2.9868, line: 2.2462, main: 1.2854, auxiliary: 1.5179 },
  ])('slip $slip, $microfarads µF', (example) => {
    const at = fields();
    turnAt(machine, example.slip, at);
    const z = (n: number): Complex => ({ re: at.z[2 * n]!, im: at.z[2 * n + 1]! });
    const own = plus(z(3), { re: 0, im: -1e6 / (314 * example.microfarads) });
    const determinant = minus(times(z(0), own), times(z(1), z(2)));
    const volts = { re: 220, im: 0 };
    const main = over(times(volts, minus(own, z(1))), determinant);
    const start = over(times(volts, minus(z(0), z(2))), determinant);
    const twist = torque(machine, at, new Float64Array([main.re, main.im, start.re, start.im, 0, 0]));
    expect(polar(main).size).toBeCloseTo(example.main, 3);
    expect(polar(start).size).toBeCloseTo(example.auxiliary, 3);
    expect(polar(plus(main, start)).size).toBeCloseTo(example.line, 3);
    expect((twist * 2 * Math.PI * 60) / ((2 * Math.PI * 1500) / 60)).toBeCloseTo(example.torque, 3);
  });
});
