import { describe, expect, test } from 'vitest';
import { deliveredWatts } from '../../src/plant/electrical/branch.ts';
import { marginsOf } from '../../src/plant/electrical/operate.ts';
import type { Edit } from '../../src/schema/fault.ts';
import { runUp, vectorInput } from './support/vectors.ts';

/**
 * What each electrical fault looks like once the motor is called: 240 V source of 0.04 + j0.02 ohm
 * a leg, pick-up 270 V, drop-out 90 V, full-load pump torque, breakaway 8 %.
 *
 * Values: an independent program of the same model (derived), printed to these digits. Amps within
 * 1 %, or half of the last digit; watts at the source within 1 %; speed within 3 rpm. The black-red
 * exchange is left out: the printed row of that program is not an equilibrium.
 */
type Amps = readonly [yellow: number, black: number, red: number];
interface Signature {
  readonly name: string;
  readonly edits: readonly Edit[];
  readonly severity?: number;
  readonly ends: 'runs' | 'runs, start branch in' | 'stalls';
  readonly rpm: number;
  readonly amps: Amps;
  readonly watts: number;
  readonly motorVolts: number;
  readonly coilVolts: number;
  /** Percent of synchronous speed where the relay opens. */
  readonly opens?: number;
  readonly startTorque?: number;
}

const FAULT = {
  healthy: { name: 'healthy', edits: [] },
  runOpen: { name: 'run capacitor open', edits: [{ edit: 'open', part: 'box.run-capacitor' }] },
  runWeak: {
    name: 'run capacitor at half',
    edits: [{ edit: 'scale', part: 'box.run-capacitor' }],
    severity: 0.5,
  },
  runShort: { name: 'run capacitor shorted', edits: [{ edit: 'short', part: 'box.run-capacitor' }] },
  startOpen: { name: 'start capacitor open', edits: [{ edit: 'open', part: 'box.start-capacitor' }] },
  startWeak: {
    name: 'start capacitor at half',
    edits: [{ edit: 'scale', part: 'box.start-capacitor' }],
    severity: 0.5,
  },
  startShort: { name: 'start capacitor shorted', edits: [{ edit: 'short', part: 'box.start-capacitor' }] },
  welded: {
    name: 'relay contact welded',
    edits: [{ edit: 'stick', part: 'box.relay-contact', state: 'made' }],
  },
  never: {
    name: 'relay contact never closes',
    edits: [{ edit: 'stick', part: 'box.relay-contact', state: 'apart' }],
  },
  coilOpen: { name: 'relay coil open', edits: [{ edit: 'open', part: 'box.relay-coil' }] },
  startWindingOpen: { name: 'start winding open', edits: [{ edit: 'open', part: 'motor.start' }] },
  redOpen: { name: 'red conductor open', edits: [{ edit: 'open', part: 'drop.red' }] },
  mainOpen: { name: 'main winding open', edits: [{ edit: 'open', part: 'motor.main' }] },
  blackOpen: { name: 'black conductor open', edits: [{ edit: 'open', part: 'drop.black' }] },
  yellowOpen: { name: 'yellow conductor open', edits: [{ edit: 'open', part: 'drop.yellow' }] },
  main5: {
    name: '5 % of main turns shorted',
    edits: [{ edit: 'scale', part: 'motor.main' }],
    severity: 0.95,
  },
  main20: {
    name: '20 % of main turns shorted',
    edits: [{ edit: 'scale', part: 'motor.main' }],
    severity: 0.8,
  },
  start20: {
    name: '20 % of start turns shorted',
    edits: [{ edit: 'scale', part: 'motor.start' }],
    severity: 0.8,
  },
  ground500: {
    name: '500 ohm from black to ground',
    edits: [{ edit: 'leak', nodes: ['motor.B', 'box.G'] }],
    severity: 500,
  },
  ground10: {
    name: '10 ohm from yellow to ground',
    edits: [{ edit: 'leak', nodes: ['motor.Y', 'box.G'] }],
    severity: 10,
  },
  supply208: { name: 'supply 208 V', edits: [{ edit: 'supply', leg: 'both' }], severity: 208 / 240 },
  supply190: { name: 'supply 190 V', edits: [{ edit: 'supply', leg: 'both' }], severity: 190 / 240 },
  splice3: { name: '3 ohm in yellow', edits: [{ edit: 'series', part: 'drop.yellow' }], severity: 3 },
  splice10: { name: '10 ohm in red', edits: [{ edit: 'series', part: 'drop.red' }], severity: 10 },
  contact2: {
    name: '2 ohm in a switch contact',
    edits: [{ edit: 'series', part: 'box.switch-1' }],
    severity: 2,
  },
  locked: { name: 'locked rotor', edits: [{ edit: 'shaft', state: 'locked' }] },
  free: { name: 'shaft free', edits: [{ edit: 'shaft', state: 'free' }] },
  dry: { name: 'a third of the load', edits: [{ edit: 'shaft', state: 'drag' }], severity: 0.35 },
  yellowRed: {
    name: 'yellow and red exchanged',
    edits: [{ edit: 'exchange', parts: ['box.lead-yellow', 'box.lead-red'] }],
  },
  yellowBlack: {
    name: 'yellow and black exchanged',
    edits: [{ edit: 'exchange', parts: ['box.lead-yellow', 'box.lead-black'] }],
  },
} satisfies Record<string, { name: string; edits: Edit[]; severity?: number }>;

const IN = 'runs, start branch in';

const SMALL: readonly Signature[] = [
  {
    ...FAULT.healthy,
    ends: 'runs',
    rpm: 3514,
    amps: [10, 10, 1.4],
    watts: 1745,
    motorVolts: 233,
    coilVolts: 271,
    opens: 77,
    startTorque: 1.67,
  },
  {
    ...FAULT.runOpen,
    ends: 'runs',
    rpm: 3504,
    amps: [11.8, 11.8, 0],
    watts: 1884,
    motorVolts: 232,
    coilVolts: 242,
    opens: 79,
    startTorque: 1.57,
  },
  {
    ...FAULT.runWeak,
    ends: 'runs',
    rpm: 3509,
    amps: [10.9, 10.9, 0.7],
    watts: 1805,
    motorVolts: 233,
    coilVolts: 256,
    opens: 78,
    startTorque: 1.62,
  },
  {
    ...FAULT.runShort,
    ends: IN,
    rpm: 3236,
    amps: [40.3, 30.4, 14.4],
    watts: 8349,
    motorVolts: 209,
    coilVolts: 234,
    startTorque: 0.47,
  },
  {
    ...FAULT.startOpen,
    ends: 'runs',
    rpm: 3514,
    amps: [10, 10, 1.4],
    watts: 1745,
    motorVolts: 233,
    coilVolts: 271,
    startTorque: 0.12,
  },
  {
    ...FAULT.startWeak,
    ends: 'runs',
    rpm: 3514,
    amps: [10, 10, 1.4],
    watts: 1745,
    motorVolts: 233,
    coilVolts: 271,
    opens: 86,
    startTorque: 0.96,
  },
  {
    ...FAULT.startShort,
    ends: IN,
    rpm: 3237,
    amps: [40.3, 30.3, 14.4],
    watts: 8343,
    motorVolts: 209,
    coilVolts: 234,
    startTorque: 0.47,
  },
  {
    ...FAULT.welded,
    ends: IN,
    rpm: 3517,
    amps: [27, 13.5, 16.9],
    watts: 6390,
    motorVolts: 222,
    coilVolts: 466,
    startTorque: 1.67,
  },
  {
    ...FAULT.never,
    ends: 'runs',
    rpm: 3514,
    amps: [10, 10, 1.4],
    watts: 1745,
    motorVolts: 233,
    coilVolts: 271,
    startTorque: 0.12,
  },
  {
    ...FAULT.coilOpen,
    ends: IN,
    rpm: 3517,
    amps: [27, 13.5, 16.9],
    watts: 6394,
    motorVolts: 222,
    coilVolts: 466,
    startTorque: 1.67,
  },
  {
    ...FAULT.startWindingOpen,
    ends: 'stalls',
    rpm: 0,
    amps: [44, 44, 0],
    watts: 9066,
    motorVolts: 204,
    coilVolts: 234,
  },
  {
    ...FAULT.redOpen,
    ends: 'stalls',
    rpm: 0,
    amps: [44, 44, 0],
    watts: 9066,
    motorVolts: 204,
    coilVolts: 234,
  },
  {
    ...FAULT.mainOpen,
    ends: 'stalls',
    rpm: 0,
    amps: [11.3, 0, 11.3],
    watts: 1816,
    motorVolts: 236,
    coilVolts: 160,
  },
  {
    ...FAULT.blackOpen,
    ends: 'stalls',
    rpm: 0,
    amps: [11.3, 0, 11.3],
    watts: 1816,
    motorVolts: 0,
    coilVolts: 160,
  },
  { ...FAULT.yellowOpen, ends: 'stalls', rpm: 0, amps: [0, 0, 0], watts: 2, motorVolts: 0, coilVolts: 240 },
  {
    ...FAULT.main5,
    ends: 'runs',
    rpm: 3511,
    amps: [13.3, 13.1, 1.3],
    watts: 2671,
    motorVolts: 230,
    coilVolts: 266,
    opens: 77,
    startTorque: 1.62,
  },
  {
    ...FAULT.main20,
    ends: 'runs',
    rpm: 3494,
    amps: [30.6, 30, 1.3],
    watts: 6972,
    motorVolts: 213,
    coilVolts: 242,
    opens: 79,
    startTorque: 1.45,
  },
  {
    ...FAULT.start20,
    ends: 'runs',
    rpm: 3465,
    amps: [16.3, 16.2, 1],
    watts: 3326,
    motorVolts: 227,
    coilVolts: 171,
    opens: 93,
    startTorque: 1.26,
  },
  {
    ...FAULT.ground500,
    ends: 'runs',
    rpm: 3514,
    amps: [10, 10.2, 1.4],
    watts: 1773,
    motorVolts: 233,
    coilVolts: 271,
    opens: 77,
  },
  {
    ...FAULT.ground10,
    ends: 'runs',
    rpm: 3509,
    amps: [19.6, 10, 1.3],
    watts: 3099,
    motorVolts: 228,
    coilVolts: 264,
    opens: 77,
  },
  {
    ...FAULT.supply208,
    ends: 'runs',
    rpm: 3479,
    amps: [10, 9.8, 1.1],
    watts: 1657,
    motorVolts: 201,
    coilVolts: 226,
    opens: 84,
    startTorque: 1.25,
  },
  {
    ...FAULT.supply190,
    ends: 'runs',
    rpm: 3447,
    amps: [10.2, 10, 1],
    watts: 1626,
    motorVolts: 182,
    coilVolts: 199,
    opens: 88,
    startTorque: 1.05,
  },
  {
    ...FAULT.splice3,
    ends: 'runs',
    rpm: 3490,
    amps: [9.9, 9.8, 1.2],
    watts: 1971,
    motorVolts: 209,
    coilVolts: 220,
    opens: 85,
    startTorque: 0.69,
  },
  {
    ...FAULT.splice10,
    ends: 'runs',
    rpm: 3514,
    amps: [10.1, 10, 1.3],
    watts: 1763,
    motorVolts: 233,
    coilVolts: 279,
    opens: 76,
    startTorque: 1.14,
  },
  {
    ...FAULT.contact2,
    ends: 'runs',
    rpm: 3499,
    amps: [9.9, 9.9, 1.2],
    watts: 1895,
    motorVolts: 218,
    coilVolts: 249,
    opens: 89,
    startTorque: 0.89,
  },
  {
    ...FAULT.locked,
    ends: 'stalls',
    rpm: 0,
    amps: [45.9, 43.4, 10.3],
    watts: 10403,
    motorVolts: 202,
    coilVolts: 142,
  },
  {
    ...FAULT.free,
    ends: 'runs',
    rpm: 3596,
    amps: [7.9, 8.7, 1.5],
    watts: 531,
    motorVolts: 238,
    coilVolts: 298,
    opens: 77,
  },
  {
    ...FAULT.dry,
    ends: 'runs',
    rpm: 3570,
    amps: [8.2, 8.7, 1.4],
    watts: 938,
    motorVolts: 237,
    coilVolts: 289,
    opens: 77,
  },
  {
    ...FAULT.yellowRed,
    ends: IN,
    rpm: -3217,
    amps: [7, 4.9, 4.4],
    watts: 1674,
    motorVolts: 92,
    coilVolts: 197,
    startTorque: 0.14,
  },
  {
    ...FAULT.yellowBlack,
    ends: 'runs',
    rpm: -3512,
    amps: [10.8, 10.2, 1],
    watts: 1806,
    motorVolts: 233,
    coilVolts: 354,
    opens: -43,
    startTorque: 0.11,
  },
];

const LARGE: readonly Signature[] = [
  {
    ...FAULT.healthy,
    ends: 'runs',
    rpm: 3497,
    amps: [13.9, 11.2, 6.2],
    watts: 3212,
    motorVolts: 231,
    coilVolts: 300,
    opens: 74,
    startTorque: 1.56,
  },
  {
    ...FAULT.runOpen,
    ends: 'runs',
    rpm: 3460,
    amps: [19.4, 19.4, 0],
    watts: 3623,
    motorVolts: 228,
    coilVolts: 221,
    opens: 78,
    startTorque: 1.42,
  },
  {
    ...FAULT.runWeak,
    ends: 'runs',
    rpm: 3481,
    amps: [16, 15.4, 2.9],
    watts: 3285,
    motorVolts: 230,
    coilVolts: 259,
    opens: 76,
    startTorque: 1.5,
  },
  {
    ...FAULT.startOpen,
    ends: 'runs',
    rpm: 3497,
    amps: [13.9, 11.2, 6.2],
    watts: 3212,
    motorVolts: 231,
    coilVolts: 300,
    opens: 95,
    startTorque: 0.28,
  },
  {
    ...FAULT.welded,
    ends: IN,
    rpm: 3458,
    amps: [52.1, 29, 28.9],
    watts: 12504,
    motorVolts: 209,
    coilVolts: 425,
    startTorque: 1.56,
  },
  {
    ...FAULT.coilOpen,
    ends: IN,
    rpm: 3457,
    amps: [52.1, 29, 28.9],
    watts: 12504,
    motorVolts: 209,
    coilVolts: 425,
  },
  {
    ...FAULT.startWindingOpen,
    ends: 'stalls',
    rpm: 0,
    amps: [64.3, 64.3, 0],
    watts: 13596,
    motorVolts: 198,
    coilVolts: 231,
  },
  {
    ...FAULT.mainOpen,
    ends: 'stalls',
    rpm: 0,
    amps: [22.8, 0, 22.8],
    watts: 4198,
    motorVolts: 233,
    coilVolts: 183,
  },
  {
    ...FAULT.main5,
    ends: 'runs',
    rpm: 3493,
    amps: [18.8, 15.6, 6.2],
    watts: 4403,
    motorVolts: 228,
    coilVolts: 294,
    opens: 75,
    startTorque: 1.53,
  },
  {
    ...FAULT.main20,
    ends: 'runs',
    rpm: 3470,
    amps: [44.6, 41, 5.7],
    watts: 10527,
    motorVolts: 208,
    coilVolts: 265,
    opens: 77,
    startTorque: 1.35,
  },
  {
    ...FAULT.supply190,
    ends: 'runs',
    rpm: 3404,
    amps: [16.6, 14.3, 4.4],
    watts: 3068,
    motorVolts: 179,
    coilVolts: 212,
    opens: 88,
    startTorque: 0.98,
  },
  {
    ...FAULT.splice3,
    ends: 'runs',
    rpm: 3410,
    amps: [16.5, 14.1, 4.5],
    watts: 3883,
    motorVolts: 181,
    coilVolts: 216,
    opens: 86,
    startTorque: 0.44,
  },
  {
    ...FAULT.contact2,
    ends: IN,
    rpm: 3294,
    amps: [38.1, 22.1, 16.9],
    watts: 9132,
    motorVolts: 141,
    coilVolts: 256,
    startTorque: 0.63,
  },
  {
    ...FAULT.locked,
    ends: 'stalls',
    rpm: 0,
    amps: [71.4, 62.7, 20.4],
    watts: 16624,
    motorVolts: 193,
    coilVolts: 163,
  },
  {
    ...FAULT.free,
    ends: 'runs',
    rpm: 3596,
    amps: [5.3, 8.2, 7.1],
    watts: 897,
    motorVolts: 239,
    coilVolts: 340,
    opens: 74,
  },
  {
    ...FAULT.yellowRed,
    ends: IN,
    rpm: -3103,
    amps: [13.7, 8.2, 9.7],
    watts: 3289,
    motorVolts: 92,
    coilVolts: 200,
    startTorque: 0.21,
  },
  {
    ...FAULT.yellowBlack,
    ends: 'runs',
    rpm: -3481,
    amps: [16.3, 12.4, 4.4],
    watts: 3426,
    motorVolts: 230,
    coilVolts: 371,
    opens: -47,
    startTorque: 0.1,
  },
];

const near = (got: number, printed: number, digit: number): void =>
  expect(Math.abs(got - printed)).toBeLessThanOrEqual(0.01 * Math.abs(printed) + digit / 2 + 1e-9);

describe.each([
  ['1.5HP', SMALL, 0.4],
  ['3HP', LARGE, 0.3],
] as const)('%s', (motor, signatures, cableOhms) => {
  test.each(signatures)('$name', (signature) => {
    const got = runUp(vectorInput(motor, cableOhms), signature.edits, signature.severity);
    const { mode, end } = got.at;
    const ends = !mode.starts ? 'stalls' : mode.releases ? 'runs' : IN;
    expect(ends).toBe(signature.ends);
    expect(Math.abs(end.speed * 3600 - signature.rpm)).toBeLessThanOrEqual(3);
    near(got.amps('box.lead-yellow'), signature.amps[0], 0.1);
    near(got.amps('box.lead-black'), signature.amps[1], 0.1);
    near(got.amps('box.lead-red'), signature.amps[2], 0.1);
    const lost = 0.04 * (got.amps('box.source-1') ** 2 + got.amps('box.source-2') ** 2);
    near(deliveredWatts(got.circuit, got.at) + lost, signature.watts, 1);
    near(got.volts('motor.B', 'motor.Y'), signature.motorVolts, 1);
    near(got.volts('box.R', 'box.Y'), signature.coilVolts, 1);
    if (signature.opens !== undefined) expect(Math.round((end.opensAt ?? 0) * 100)).toBe(signature.opens);
    if (signature.startTorque !== undefined) {
      near(Math.exp(marginsOf(got.drive).start) * 0.08, signature.startTorque, 0.01);
    }
  });
});
