import { describe, expect, test } from 'vitest';
import type { Edit } from '../../src/schema/fault.ts';
import { held, vectorInput } from './support/vectors.ts';

/**
 * Whole installations held at a slip: 120 V a leg, 0.4 ohm a conductor, box with potential relay.
 *
 * Values: an independent program of the same equations, each case checked against a circuit
 * simulator, printed to these digits (derived). In the two exchanged cases "box" volts are taken at
 * the box terminals and lead amps by terminal.
 */
interface Vector {
  readonly name: string;
  readonly motor: '1.5HP' | '3HP';
  readonly slip: number;
  readonly startIn: boolean;
  readonly edits: readonly Edit[];
  readonly severity?: number;
  readonly yellow: number;
  readonly black: number;
  readonly red: number;
  readonly boxVolts: number;
  readonly motorVolts: number;
  readonly coilVolts: number;
  readonly runCapacitorVolts: number;
  readonly blackToGround: number;
  readonly torque: number;
}

const VECTORS: readonly Vector[] = [
  {
    name: 'standstill',
    motor: '1.5HP',
    slip: 1,
    startIn: true,
    edits: [],
    yellow: 45.8575,
    black: 43.3941,
    red: 10.2847,
    boxVolts: 233.115,
    motorVolts: 201.656,
    coilVolts: 142.369,
    runCapacitorVolts: 217.79,
    blackToGround: 116.233,
    torque: 5.073,
  },
  {
    name: 'running',
    motor: '1.5HP',
    slip: 0.03,
    startIn: false,
    edits: [],
    yellow: 10.9314,
    black: 10.8131,
    red: 1.3192,
    boxVolts: 238.494,
    motorVolts: 232.2,
    coilVolts: 264.225,
    runCapacitorVolts: 354.987,
    blackToGround: 119.183,
    torque: 3.8116,
  },
  {
    name: 'half way up',
    motor: '1.5HP',
    slip: 0.4,
    startIn: true,
    edits: [],
    yellow: 41.6849,
    black: 35.5851,
    red: 9.4359,
    boxVolts: 233.728,
    motorVolts: 205.374,
    coilVolts: 215.846,
    runCapacitorVolts: 199.943,
    blackToGround: 116.564,
    torque: 9.9161,
  },
  {
    name: '3 ohm in the black conductor',
    motor: '3HP',
    slip: 0.03,
    startIn: false,
    edits: [{ edit: 'series', part: 'drop.black' }],
    severity: 3,
    yellow: 12.7056,
    black: 9.7735,
    red: 6.1099,
    boxVolts: 238.105,
    motorVolts: 206.92,
    coilVolts: 273.178,
    runCapacitorVolts: 361.327,
    blackToGround: 118.958,
    torque: 5.4394,
  },
  {
    name: '20 ohm from black at the motor to ground',
    motor: '3HP',
    slip: 0.03,
    startIn: true,
    edits: [{ edit: 'leak', nodes: ['motor.B', 'box.G'] }],
    severity: 20,
    yellow: 48.9369,
    black: 31.5761,
    red: 28.8505,
    boxVolts: 232.578,
    motorVolts: 201.951,
    coilVolts: 427.197,
    runCapacitorVolts: 279.966,
    blackToGround: 115.71,
    torque: 4.0883,
  },
  {
    name: 'yellow and red exchanged',
    motor: '3HP',
    slip: 1,
    startIn: true,
    edits: [{ edit: 'exchange', parts: ['box.lead-yellow', 'box.lead-red'] }],
    yellow: 20.5233,
    black: 22.6479,
    red: 7.9571,
    boxVolts: 236.914,
    motorVolts: 69.598,
    coilVolts: 161.686,
    runCapacitorVolts: 77.042,
    blackToGround: 118.311,
    torque: -1.2705,
  },
  {
    name: 'black and red exchanged',
    motor: '3HP',
    slip: 1.9,
    startIn: false,
    edits: [{ edit: 'exchange', parts: ['box.lead-black', 'box.lead-red'] }],
    yellow: 15.3997,
    black: 14.3703,
    red: 4.3316,
    boxVolts: 237.725,
    motorVolts: 111.423,
    coilVolts: 112.788,
    runCapacitorVolts: 255.698,
    blackToGround: 118.747,
    torque: -5.8581,
  },
];

describe.each(VECTORS)('$motor $name', (vector) => {
  const got = held(vectorInput(vector.motor), vector);

  test('amps of the leads', () => {
    expect(got.amps('box.lead-yellow')).toBeCloseTo(vector.yellow, 3);
    expect(got.amps('box.lead-black')).toBeCloseTo(vector.black, 3);
    expect(got.amps('box.lead-red')).toBeCloseTo(vector.red, 3);
  });

  test('volts', () => {
    expect(got.volts('box.B', 'box.Y')).toBeCloseTo(vector.boxVolts, 2);
    expect(got.volts('motor.B', 'motor.Y')).toBeCloseTo(vector.motorVolts, 2);
    expect(got.volts('box.R', 'box.Y')).toBeCloseTo(vector.coilVolts, 2);
    expect(got.volts('box.X', 'box.R')).toBeCloseTo(vector.runCapacitorVolts, 2);
    expect(got.volts('box.B', 'box.G')).toBeCloseTo(vector.blackToGround, 2);
  });

  test('torque', () => expect(got.at.turning.torque).toBeCloseTo(vector.torque, 3));
});
