import { describe, expect, test } from 'vitest';
import type { Edit } from '../../src/schema/fault.ts';
import { faulted, LIFTED, number, OFF, SPLIT } from './support/ask.ts';
import { large, plugApart, type Setting, small, twoWire } from './support/inputs.ts';
import { held, vectorInput } from './support/vectors.ts';

/**
 * Ohmmeter and insulation tester.
 *
 * The first table is worked by an independent program (derived): 0.4 / 0.3 ohm of cable a lead, 15
 * kilohm bleed, 5.5 kilohm coil, box in circuit or leads lifted. Our splices, terminals and protector
 * add 0.03 to 0.04 ohm a pair and the touching spot of
 * shorted turns 0.04, which the tolerance allows.
 */
const OL = 1e8;
type Triple = readonly [yellowBlack: number, yellowRed: number, blackRed: number];

interface Row {
  readonly name: string;
  readonly setting: Setting;
  readonly edits: readonly Edit[];
  readonly severity?: number;
  readonly lifted: boolean;
  readonly ohms: Triple;
}

const mainOpen: Edit[] = [{ edit: 'open', part: 'motor.main' }];
const startOpen: Edit[] = [{ edit: 'open', part: 'motor.start' }];
const splice: Edit[] = [{ edit: 'series', part: 'well.splice-black' }];
const turns: Edit[] = [{ edit: 'scale', part: 'motor.main' }];
const runShort: Edit[] = [{ edit: 'short', part: 'box.run-capacitor' }];

const ROWS: readonly Row[] = [
  { name: 'healthy', setting: small, edits: [], lifted: true, ohms: [2.7, 9.15, 11.05] },
  { name: 'healthy', setting: small, edits: [], lifted: false, ohms: [2.7, 9.13, 11.03] },
  { name: 'main open', setting: small, edits: mainOpen, lifted: true, ohms: [OL, 9.15, OL] },
  { name: 'main open', setting: small, edits: mainOpen, lifted: false, ohms: [15000, 9.13, 15000] },
  { name: 'start open', setting: small, edits: startOpen, lifted: true, ohms: [2.7, OL, OL] },
  { name: 'start open', setting: small, edits: startOpen, lifted: false, ohms: [2.7, 4024, 4024] },
  {
    name: '3 ohm in the black splice',
    setting: small,
    edits: splice,
    severity: 3,
    lifted: true,
    ohms: [5.7, 9.15, 14.05],
  },
  {
    name: '20 % of main turns shorted',
    setting: small,
    edits: turns,
    severity: 0.8,
    lifted: true,
    ohms: [2.32, 9.15, 10.67],
  },
  { name: 'run capacitor shorted', setting: small, edits: runShort, lifted: false, ohms: [2.22, 2.26, 0.07] },
  { name: 'healthy', setting: large, edits: [], lifted: true, ohms: [1.85, 5, 6.25] },
  { name: 'healthy', setting: large, edits: [], lifted: false, ohms: [1.85, 4.99, 6.24] },
  { name: 'main open', setting: large, edits: mainOpen, lifted: false, ohms: [15000, 5, 15000] },
  { name: 'start open', setting: large, edits: startOpen, lifted: false, ohms: [1.85, 4024, 4024] },
  {
    name: '3 ohm in the black splice',
    setting: large,
    edits: splice,
    severity: 3,
    lifted: true,
    ohms: [4.85, 5, 9.25],
  },
  { name: 'run capacitor shorted', setting: large, edits: runShort, lifted: false, ohms: [1.47, 1.5, 0.07] },
];

const PAIRS = [
  ['Y', 'B'],
  ['Y', 'R'],
  ['B', 'R'],
] as const;

describe.each(ROWS)('$setting.motor, $name, leads lifted: $lifted', (row) => {
  const state = faulted(row.setting, row.edits, row.severity === undefined ? {} : { severity: row.severity });

  test.each(PAIRS.map((pair, place) => ({ pair, printed: row.ohms[place]! })))(
    '$pair',
    ({ pair, printed }) => {
      const side = row.lifted ? 'lead' : 'box';
      const got = number(
        state,
        'ohms',
        { between: [`${side}.${pair[0]}`, `${side}.${pair[1]}`] },
        row.lifted ? LIFTED : OFF,
      );
      if (printed === OL) expect(got).toBeGreaterThan(OL);
      else if (printed > 1000) expect(Math.abs(got / printed - 1)).toBeLessThan(0.002);
      else expect(Math.abs(got - printed)).toBeLessThan(0.08);
    },
  );
});

describe('what is in the circuit is in the reading', () => {
  test('leads that were exchanged show at the terminals they were lifted from', () => {
    const state = faulted(small, [{ edit: 'exchange', parts: ['box.lead-black', 'box.lead-red'] }]);
    const ohms = (one: string, other: string) =>
      number(state, 'ohms', { between: [`lead.${one}`, `lead.${other}`] }, LIFTED);
    expect(ohms('Y', 'B')).toBeCloseTo(9.18, 2);
    expect(ohms('Y', 'R')).toBeCloseTo(2.73, 2);
    expect(ohms('B', 'R')).toBeCloseTo(11.06, 2);
  });

  test('the sum of the pairs leaves the yellow conductor twice', () => {
    const state = faulted(small, [{ edit: 'series', part: 'run.yellow' }], { severity: 2 });
    const ohms = (one: string, other: string) =>
      number(state, 'ohms', { between: [`lead.${one}`, `lead.${other}`] }, LIFTED);
    expect((ohms('Y', 'B') + ohms('Y', 'R') - ohms('B', 'R')) / 2).toBeCloseTo(0.4 + 0.025 + 2, 6);
  });

  test('split at the well, the buried run tells its own story', () => {
    const open = faulted(small, [{ edit: 'open', part: 'run.black' }]);
    const loop = (state = open) =>
      number(state, 'ohms', { between: ['well.Y', 'well.B'], tie: ['lead.Y', 'lead.B'] }, SPLIT);
    expect(loop()).toBeGreaterThan(OL);
    expect(loop(faulted(small))).toBeCloseTo(0.2 + 0.2 + 0.005, 6);
    expect(number(open, 'ohms', { between: ['drop.Y', 'drop.B'] }, SPLIT)).toBeCloseTo(1.9 + 0.4 + 0.02, 6);
  });

  test('a protector that closes again is open hot and whole when cool', () => {
    const state = faulted(twoWire, [{ edit: 'open', part: 'motor.protector', untilCool: true }]);
    const at = { between: ['lead.1', 'lead.2'] } as const;
    expect(number(state, 'ohms', { between: [...at.between] }, LIFTED)).toBeGreaterThan(OL);
    expect(number(state, 'ohms', { between: [...at.between] }, { ...LIFTED, cooled: true })).toBeCloseTo(
      4.33,
      2,
    );
  });

  test('a two-wire motor shows its main winding alone: the start switch is apart at rest', () => {
    expect(number(faulted(twoWire), 'ohms', { between: ['lead.1', 'lead.2'] }, LIFTED)).toBeCloseTo(
      3.3 + 0.5 + 0.5 + 0.03,
      6,
    );
  });

  test('the supply is locked off: no reading goes through the service', () => {
    const state = faulted(small);
    expect(number(state, 'ohms', { between: ['service.L1', 'service.L2'] }, OFF)).toBeGreaterThan(OL);
    const called = { ...OFF, calling: true };
    expect(number(state, 'ohms', { between: ['box.L1', 'box.L2'] }, called)).toBeLessThan(3);
  });
});

describe('across one part, its own wires off', () => {
  const whole = (setting: Setting, part: string, edits: Edit[] = []) =>
    number(faulted(setting, edits), 'ohms', { across: part }, OFF);

  test('contacts are held made, coils are themselves', () => {
    expect(whole(large, 'box.pole-1')).toBeCloseTo(0.01, 6);
    expect(whole(large, 'switch.pole-1')).toBeCloseTo(0.01, 6);
    expect(whole(small, 'panel.breaker-1')).toBeCloseTo(0.01, 6);
    expect(whole(small, 'box.relay-contact')).toBeCloseTo(0.02, 6);
    expect(whole(small, 'box.relay-coil')).toBeCloseTo(5500, 6);
    expect(whole(large, 'box.contactor-coil')).toBeCloseTo(600, 6);
    expect(whole(plugApart, 'box.sense-coil')).toBeCloseTo(0.01, 6);
  });

  test('a current-sensing switch and a capacitor are open at rest, shorted ones are not', () => {
    expect(whole(plugApart, 'box.sense-switch')).toBeGreaterThanOrEqual(OL);
    expect(whole(plugApart, 'box.sense-switch', [{ edit: 'short', part: 'box.sense-switch' }])).toBeLessThan(
      0.01,
    );
    expect(whole(small, 'box.run-capacitor')).toBeGreaterThan(OL);
    expect(whole(small, 'box.run-capacitor', runShort)).toBeLessThan(0.01);
  });

  test('a contact stuck apart stays apart in the hand; a broken part conducts nothing', () => {
    expect(
      whole(large, 'box.pole-1', [{ edit: 'stick', part: 'box.pole-1', state: 'apart' }]),
    ).toBeGreaterThan(OL);
    expect(whole(small, 'box.main-overload', [{ edit: 'open', part: 'box.main-overload' }])).toBeGreaterThan(
      OL,
    );
  });
});

describe('insulation, all leads tied to ground', () => {
  const tied = { tied: ['lead.Y', 'lead.B', 'lead.R'], to: 'box.G' };

  test('sound, one standard deviation down, and with a leak', () => {
    expect(number(faulted(small), 'insulation', tied, LIFTED) / 20e6).toBeCloseTo(1, 2);
    const low = faulted(small, [], { unknowns: { insulation: -1 } });
    expect(number(low, 'insulation', tied, LIFTED) / (20e6 * Math.exp(-1.4))).toBeCloseTo(1, 2);
    const leak = faulted(small, [{ edit: 'leak', nodes: ['motor.B', 'motor.G'] }], { severity: 20e3 });
    expect(number(leak, 'insulation', tied, LIFTED) / 20e3).toBeCloseTo(1, 2);
  });

  test('split, each side shows its own leak', () => {
    const state = faulted(small, [{ edit: 'leak', nodes: ['well.B', 'well.G'] }], { severity: 500 });
    const of = (side: string) => ({ tied: [`${side}.Y`, `${side}.B`, `${side}.R`], to: 'well.G' });
    expect(number(state, 'insulation', of('well'), SPLIT)).toBeCloseTo(500, 0);
    expect(number(state, 'insulation', of('drop'), SPLIT) / 20e6).toBeCloseTo(1, 2);
  });
});

test('a leak of 20 kilohm is one to the ohmmeter as well', () => {
  const { circuit } = held(vectorInput('1.5HP'), { slip: 1, startIn: true });
  expect(circuit.layout.size).toBeGreaterThan(10);
  const state = faulted(small, [{ edit: 'leak', nodes: ['motor.B', 'motor.G'] }], { severity: 20e3 });
  expect(number(state, 'ohms', { between: ['lead.Y', 'box.G'] }, LIFTED) / 20e3).toBeCloseTo(1, 2);
});
