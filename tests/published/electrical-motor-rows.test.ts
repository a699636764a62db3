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
import { type MotorModel, motorModel } from '../../src/schema/motor.ts';

/**
 * The fitted motors against the printed rows of their maker: 230 V at the motor, at the slip that
 * gives the row's shaft power, or at standstill.
 *
 * Printed values: submersible motor manual, tables of single-phase motors (mostly memory) and of
 * auxiliary run capacitors (seen). `off` is how far the fit is known to miss the worst value of the
 * row; the rows marked held out took no part in the fit. A model that misses by more has changed.
 */
const files = import.meta.glob('../../content/motor-models/*.json', { eager: true, import: 'default' });
const models: Record<string, MotorModel> = Object.fromEntries(
  Object.values(files)
    .map((file) => motorModel.parse(file))
    .map((model) => [model.id, model]),
);

interface Row {
  readonly motor: string;
  readonly row: string;
  /** Watts at the shaft; 0 at standstill. */
  readonly shaft: number;
  readonly runMicrofarads: number;
  readonly amps: readonly [yellow: number, black?: number, red?: number];
  readonly watts?: number;
  /** Largest miss, per cent of the printed value. */
  readonly off: number;
}

const HP = 745.7;
const small = (hp: string) => `3-wire-${hp}hp-230v-start-only`;
const run = (hp: string) => `3-wire-${hp}hp-230v-start-and-run`;

const ROWS: readonly Row[] = [
  {
    motor: small('0.5'),
    row: 'full load',
    shaft: 0.5 * HP,
    runMicrofarads: 0,
    amps: [5, 5],
    watts: 670,
    off: 1.6,
  },
  {
    motor: small('0.5'),
    row: 'service factor',
    shaft: 0.8 * HP,
    runMicrofarads: 0,
    amps: [6, 6],
    watts: 960,
    off: 1.3,
  },
  {
    motor: small('0.5'),
    row: 'service factor, auxiliary capacitor',
    shaft: 0.8 * HP,
    runMicrofarads: 15,
    amps: [4.2, 3.5, 2],
    off: 1.1,
  },
  {
    motor: small('0.5'),
    row: 'small lid, full load (held out)',
    shaft: 0.5 * HP,
    runMicrofarads: 15,
    amps: [3.6, 3.7, 2],
    watts: 655,
    off: 22.6,
  },
  {
    motor: small('0.5'),
    row: 'small lid, service factor (held out)',
    shaft: 0.8 * HP,
    runMicrofarads: 15,
    amps: [4.3, 4, 2],
    watts: 890,
    off: 12.8,
  },
  {
    motor: small('0.75'),
    row: 'full load',
    shaft: 0.75 * HP,
    runMicrofarads: 0,
    amps: [6.8, 6.8],
    watts: 940,
    off: 1.1,
  },
  {
    motor: small('0.75'),
    row: 'service factor',
    shaft: 1.125 * HP,
    runMicrofarads: 0,
    amps: [8, 8],
    watts: 1310,
    off: 1.1,
  },
  {
    motor: small('0.75'),
    row: 'service factor, auxiliary capacitor',
    shaft: 1.125 * HP,
    runMicrofarads: 20,
    amps: [5.8, 5, 2.5],
    off: 1.7,
  },
  {
    motor: small('0.75'),
    row: 'small lid, full load (held out)',
    shaft: 0.75 * HP,
    runMicrofarads: 23,
    amps: [4.9, 5, 3.2],
    watts: 925,
    off: 24.6,
  },
  {
    motor: small('0.75'),
    row: 'small lid, service factor (held out)',
    shaft: 1.125 * HP,
    runMicrofarads: 23,
    amps: [5.7, 5.2, 3.1],
    watts: 1220,
    off: 12.2,
  },
  {
    motor: small('1'),
    row: 'full load',
    shaft: HP,
    runMicrofarads: 0,
    amps: [8.2, 8.2],
    watts: 1210,
    off: 4.4,
  },
  {
    motor: small('1'),
    row: 'service factor',
    shaft: 1.4 * HP,
    runMicrofarads: 0,
    amps: [10.4, 10.4],
    watts: 1600,
    off: 4.8,
  },
  {
    motor: small('1'),
    row: 'service factor, auxiliary capacitor',
    shaft: 1.4 * HP,
    runMicrofarads: 25,
    amps: [7.1, 5.6, 3.4],
    off: 1.2,
  },
  {
    motor: small('1'),
    row: 'small lid, full load (held out)',
    shaft: HP,
    runMicrofarads: 23,
    amps: [6, 5.7, 3.4],
    watts: 1160,
    off: 15,
  },
  {
    motor: small('1'),
    row: 'small lid, service factor (held out)',
    shaft: 1.4 * HP,
    runMicrofarads: 23,
    amps: [7.1, 6.2, 3.3],
    watts: 1490,
    off: 7.4,
  },
  {
    motor: run('1'),
    row: 'full load',
    shaft: HP,
    runMicrofarads: 10,
    amps: [6.6, 6.6, 1.3],
    watts: 1130,
    off: 1.7,
  },
  {
    motor: run('1'),
    row: 'service factor',
    shaft: 1.4 * HP,
    runMicrofarads: 10,
    amps: [8, 7.9, 1.3],
    watts: 1500,
    off: 2.2,
  },
  {
    motor: run('1.5'),
    row: 'full load',
    shaft: 1.5 * HP,
    runMicrofarads: 10,
    amps: [10, 9.9, 1.3],
    watts: 1620,
    off: 2.7,
  },
  {
    motor: run('1.5'),
    row: 'service factor',
    shaft: 1.95 * HP,
    runMicrofarads: 10,
    amps: [11.5, 11, 1.3],
    watts: 2080,
    off: 2.7,
  },
  {
    motor: run('1.5'),
    row: 'service factor, auxiliary capacitor',
    shaft: 1.95 * HP,
    runMicrofarads: 30,
    amps: [9.3, 7.5, 4.4],
    off: 3.6,
  },
  {
    motor: run('2'),
    row: 'full load',
    shaft: 2 * HP,
    runMicrofarads: 20,
    amps: [10, 9.3, 2.6],
    watts: 2025,
    off: 1.7,
  },
  {
    motor: run('2'),
    row: 'service factor',
    shaft: 2.5 * HP,
    runMicrofarads: 20,
    amps: [13.2, 11.9, 2.6],
    watts: 2555,
    off: 6.1,
  },
  {
    motor: run('2'),
    row: 'service factor, auxiliary capacitor',
    shaft: 2.5 * HP,
    runMicrofarads: 30,
    amps: [11.2, 9.2, 3.8],
    off: 4.1,
  },
  {
    motor: run('3'),
    row: 'full load',
    shaft: 3 * HP,
    runMicrofarads: 45,
    amps: [14, 11.2, 6.1],
    watts: 3000,
    off: 2.3,
  },
  {
    motor: run('3'),
    row: 'service factor',
    shaft: 3.45 * HP,
    runMicrofarads: 45,
    amps: [17, 12.6, 6],
    watts: 3400,
    off: 7.6,
  },
  {
    motor: run('5'),
    row: 'full load',
    shaft: 5 * HP,
    runMicrofarads: 80,
    amps: [23, 15.9, 11],
    watts: 4830,
    off: 4.5,
  },
  {
    motor: run('5'),
    row: 'service factor',
    shaft: 5.75 * HP,
    runMicrofarads: 80,
    amps: [27.5, 19.1, 10.8],
    watts: 5500,
    off: 8.6,
  },
  {
    motor: '3-wire-5hp-6in-230v-start-and-run',
    row: 'full load',
    shaft: 5 * HP,
    runMicrofarads: 80,
    amps: [23, 14.3, 10.8],
    watts: 4910,
    off: 4.8,
  },
  {
    motor: '3-wire-5hp-6in-230v-start-and-run',
    row: 'service factor',
    shaft: 5.75 * HP,
    runMicrofarads: 80,
    amps: [27.5, 17.4, 10.5],
    watts: 5570,
    off: 8.1,
  },
  {
    motor: run('7.5'),
    row: 'full load',
    shaft: 7.5 * HP,
    runMicrofarads: 45,
    amps: [36.5, 34.4, 5.5],
    watts: 7300,
    off: 2.3,
  },
  {
    motor: run('7.5'),
    row: 'service factor',
    shaft: 8.625 * HP,
    runMicrofarads: 45,
    amps: [42.1, 40.5, 5.4],
    watts: 8800,
    off: 1.5,
  },
  {
    motor: run('7.5'),
    row: 'service factor, auxiliary capacitor',
    shaft: 8.625 * HP,
    runMicrofarads: 90,
    amps: [37, 32, 11.3],
    off: 1.5,
  },
  {
    motor: run('10'),
    row: 'full load',
    shaft: 10 * HP,
    runMicrofarads: 70,
    amps: [44, 39.5, 9.3],
    watts: 9800,
    off: 2.4,
  },
  {
    motor: run('10'),
    row: 'service factor',
    shaft: 11.5 * HP,
    runMicrofarads: 70,
    amps: [51, 47.5, 8.9],
    watts: 11300,
    off: 1.5,
  },
  {
    motor: run('10'),
    row: 'service factor, auxiliary capacitor',
    shaft: 11.5 * HP,
    runMicrofarads: 100,
    amps: [49, 42, 13],
    off: 3.2,
  },
  {
    motor: run('15'),
    row: 'full load',
    shaft: 15 * HP,
    runMicrofarads: 135,
    amps: [62, 52, 17.5],
    watts: 13900,
    off: 0.9,
  },
  {
    motor: run('15'),
    row: 'service factor',
    shaft: 17.25 * HP,
    runMicrofarads: 135,
    amps: [75, 62.5, 16.9],
    watts: 16200,
    off: 3.3,
  },
];

/** Locked rotor at 230 V with the start capacitor (and run capacitor) in; 15 hp is left out: its start capacitor is unknown. */
const LOCKED: readonly (readonly [motor: string, amps: number, off: number])[] = [
  [small('0.5'), 23, 0.6],
  [small('0.75'), 34.2, 0.6],
  [small('1'), 41.8, 1.3],
  [run('1'), 43, 0.8],
  [run('1.5'), 51.4, 0.1],
  [run('2'), 51, 1.8],
  [run('3'), 83.4, 0.5],
  [run('5'), 129, 0.7],
  ['3-wire-5hp-6in-230v-start-and-run', 99, 0.3],
  [run('7.5'), 165, 0.2],
  [run('10'), 204, 1],
];

interface Complex {
  readonly re: number;
  readonly im: number;
}
const VOLTS = 230;
const admittance = ({ re, im }: Complex): Complex => ({
  re: re / (re * re + im * im),
  im: -im / (re * re + im * im),
});

/** Impedance of run capacitor in parallel with the start capacitor, or undefined for an open red lead. */
function feed(run: number, start: number): Complex | undefined {
  const one = (microfarads: number, share: number): Complex => {
    if (microfarads === 0) return { re: 0, im: 0 };
    const reactance = 1e6 / (2 * Math.PI * 60 * microfarads);
    return admittance({ re: share * reactance, im: -reactance });
  };
  const both = { re: one(run, 0.002).re + one(start, 0.05).re, im: one(run, 0.002).im + one(start, 0.05).im };
  return both.im === 0 ? undefined : admittance(both);
}

/** Amps, watts and shaft power of a motor on a stiff line at a slip. */
function at(machine: Machine, slip: number, series: Complex | undefined) {
  const turned = fields();
  turnAt(machine, slip, turned);
  const { z } = turned;
  const own = series === undefined ? { re: 1e12, im: 0 } : { re: z[6]! + series.re, im: z[7]! + series.im };
  const det = {
    re: z[0]! * own.re - z[1]! * own.im - (z[2]! * z[4]! - z[3]! * z[5]!),
    im: z[0]! * own.im + z[1]! * own.re - (z[2]! * z[5]! + z[3]! * z[4]!),
  };
  const y = admittance(det);
  const by = (re: number, im: number): Complex => ({
    re: VOLTS * (re * y.re - im * y.im),
    im: VOLTS * (re * y.im + im * y.re),
  });
  const main = by(own.re - z[2]!, own.im - z[3]!);
  const start = by(z[0]! - z[4]!, z[1]! - z[5]!);
  const twist = torque(machine, turned, new Float64Array([main.re, main.im, start.re, start.im, 0, 0]));
  return {
    yellow: Math.hypot(main.re + start.re, main.im + start.im),
    black: Math.hypot(main.re, main.im),
    red: Math.hypot(start.re, start.im),
    watts: VOLTS * (main.re + start.re),
    shaft: (1 - slip) * twist * SYNCHRONOUS - machine.friction * (1 - slip) ** 2,
  };
}

/** The slip, below the peak of torque, that gives a shaft power. */
function slipFor(machine: Machine, shaft: number, series: Complex | undefined): number {
  let low = 1e-3;
  let high = 0.12;
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    if (at(machine, middle, series).shaft < shaft) low = middle;
    else high = middle;
  }
  return low;
}

const misses = (got: number, printed: number): number => Math.abs(got / printed - 1) * 100;

describe.each(ROWS)('$motor, $row', (row) => {
  const model = models[row.motor]!;
  const machine = machineOf(model, soundWindings(model));
  const series = feed(row.runMicrofarads, 0);
  const got = at(machine, slipFor(machine, row.shaft, series), series);

  test('amps and watts within what the fit is known to miss', () => {
    const [yellow, black, red] = row.amps;
    expect(misses(got.yellow, yellow)).toBeLessThan(row.off);
    if (black !== undefined) expect(misses(got.black, black)).toBeLessThan(row.off);
    if (red !== undefined) expect(misses(got.red, red)).toBeLessThan(row.off);
    if (row.watts !== undefined) expect(misses(got.watts, row.watts)).toBeLessThan(row.off);
  });
});

test.each(LOCKED)('%s locked: %d A', (motor, amps, off) => {
  const model = models[motor]!;
  const farads = (model.runCapacitor ?? 0) * 1e6;
  const got = at(machineOf(model, soundWindings(model)), 1, feed(farads, model.startCapacitor! * 1e6));
  expect(misses(got.yellow, amps)).toBeLessThan(off);
});

/** Two-lead motors: start and main in parallel at standstill, published locked-rotor amps (memory). */
test.each([
  ['2-wire-0.5hp-230v', 32.2],
  ['2-wire-0.75hp-230v', 40.7],
  ['2-wire-1hp-230v', 48.7],
  ['2-wire-1.5hp-230v', 66.2],
])('%s locked: %d A', (motor, amps) => {
  const model = models[motor]!;
  const got = at(machineOf(model, soundWindings(model)), 1, { re: 0, im: 0 });
  expect(misses(got.yellow, amps)).toBeLessThan(0.1);
});

test('the load points stored with each model are those of its power', () => {
  for (const row of ROWS.filter(({ row: name, runMicrofarads, motor }) => {
    const own = (models[motor]!.runCapacitor ?? 0) * 1e6;
    return Math.abs(own - runMicrofarads) < 0.01 && !name.includes('held out');
  })) {
    const model = models[row.motor]!;
    const machine = machineOf(model, soundWindings(model));
    const slip = slipFor(machine, row.shaft, feed(row.runMicrofarads, 0));
    const point = row.row === 'full load' ? model.fullLoad : model.serviceFactorLoad;
    expect(Math.abs(slip / point.slip - 1)).toBeLessThan(1e-3);
    expect(Math.abs(row.shaft / ((1 - slip) * SYNCHRONOUS) / point.torque - 1)).toBeLessThan(1e-3);
  }
});
