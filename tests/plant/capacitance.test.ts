import { describe, expect, test } from 'vitest';
import meter from '../../content/instruments/capacitance-meter.json';
import { standstillOhms } from '../../src/plant/electrical/standstill.ts';
import { instrument } from '../../src/schema/check.ts';
import type { Edit } from '../../src/schema/fault.ts';
import { of } from '../../src/units/units.ts';
import { faulted, LIFTED, number, OFF, RUN, reading } from './support/ask.ts';
import { elements, input, small } from './support/inputs.ts';
import { held } from './support/vectors.ts';

/**
 * What does a capacitance meter show between two points of a dead circuit?
 *
 * |Y|/ω of everything there, at 120 Hz. The box: 10 µF run capacitor, 115.5 µF start capacitor with a
 * 15 kΩ bleed behind a relay contact that is made at rest.
 */
const OMEGA = 2 * Math.PI * 120;
const RUN_CAN = { between: ['box.tap', 'box.R'] as [string, string] };
const START_CAN = { between: ['box.tap', 'box.one'] as [string, string] };
const relayOut: Edit = { edit: 'open', part: 'box.relay-contact' };
const open = (part: string): Edit => ({ edit: 'open', part });
const top = 1e6 * of(instrument.parse(meter).top![0], 'uF');

const shown = (edits: readonly Edit[], at = RUN_CAN, site = LIFTED): number =>
  1e6 * number(faulted(small, edits), 'capacitance', at, site);

test('the meter measures at the frequency of the tests', () => {
  expect(elements['capacitance-meter']?.frequency).toBe(120);
});

describe('with nothing beside it', () => {
  test('the run capacitor shows what it is', () => {
    expect(shown([relayOut])).toBeCloseTo(10, 2);
  });

  test('open it shows nothing, bridged more than the meter can', () => {
    expect(shown([relayOut, open('box.run-capacitor')])).toBeLessThan(0.01);
    expect(shown([relayOut, { edit: 'short', part: 'box.run-capacitor' }])).toBeGreaterThan(top);
  });
});

describe('what lies beside it spoils it', () => {
  /** At rest the relay contact joins the two cans: 10 µF beside 115.5 µF with 5 % of series resistance. */
  test('the start capacitor through the relay contact', () => {
    const [run, start] = [10e-6, 115.5e-6].map((farads) => 1 / (OMEGA * farads)) as [number, number];
    const square = (0.05 * start) ** 2 + start ** 2;
    const y = Math.hypot((0.05 * start) / square + 0.002 / run, start / square + 1 / run);
    expect(shown([])).toBeGreaterThan((0.995 * 1e6 * y) / OMEGA);
    expect(shown([])).toBeLessThan((1.005 * 1e6 * y) / OMEGA);
  });

  /** 1 ÷ (ω · 15 kΩ) = 0.088 µF: a good can drowns it, an open one leaves it alone. */
  test('a bleed resistor', () => {
    expect(shown([relayOut, open('box.start-capacitor')], START_CAN)).toBeCloseTo(0.0884, 3);
    const alone = shown([relayOut, open('box.bleed')], START_CAN);
    expect(alone).toBeCloseTo(115.5 / Math.hypot(1, 0.05), 0);
    expect(Math.abs(shown([relayOut], START_CAN) / alone - 1)).toBeLessThan(0.001);
  });

  /**
   * Both windings in a row, cold, cage included: R = 1.9 + 8.35 + 1.54 (1 + 1.836) + 0.4 = 15 Ω and at
   * twice the line frequency X = 2 · 1.603 (1 + 1 + 1.836 · 1.098 + 1.836) = 18.8 Ω, magnetising left out.
   * Alone |Y|/ω = 55 µF; the capacitor takes its own 10 µF off the inductive part: 48 µF.
   */
  test('the windings, leads on: a good 10 µF looks almost five times too large', () => {
    const [r, x] = [15, 18.8];
    const square = r * r + x * x;
    const alone = 1e6 / (OMEGA * Math.sqrt(square));
    const beside = (1e6 * Math.hypot(r / square, x / square - OMEGA * 10e-6)) / OMEGA;
    const near = (got: number, worked: number) => expect(Math.abs(got / worked - 1)).toBeLessThan(0.06);
    near(shown([relayOut, open('box.run-capacitor')], RUN_CAN, OFF), alone);
    near(shown([relayOut], RUN_CAN, OFF), beside);
    expect(shown([relayOut, open('motor.start')], RUN_CAN, OFF)).toBeLessThan(10.5);
  });

  test('turns that touch let the winding in still more', () => {
    const cut = faulted(small, [relayOut, { edit: 'scale', part: 'motor.main' }], { severity: 0.8 });
    expect(1e6 * number(cut, 'capacitance', RUN_CAN, OFF)).toBeGreaterThan(shown([relayOut], RUN_CAN, OFF));
  });

  test('a bare main winding passes for a can of hundreds of microfarads', () => {
    const main = shown([], { between: ['lead.Y', 'lead.B'] }, LIFTED);
    expect(main).toBeGreaterThan(100);
    expect(main).toBeLessThan(top);
  });
});

/** Unsaturated and as cold as hot, it is the same motor that stands at power-up. */
describe.each([
  ['sound', 1],
  ['a fifth of its turns bridged', 0.8],
])('the impedance of a resting winding, %s', (_, scale) => {
  test.each([
    ['main', 'black', 0],
    ['start', 'red', 2],
  ] as const)('%s: volts over amps of a stalled motor', (winding, lead, place) => {
    const plant = input(small);
    const bare = { ...plant, model: { ...plant.model!, hotFactor: 1, saturationFactor: 1 } };
    const other = winding === 'main' ? 'start' : 'main';
    const edits: Edit[] = [{ edit: 'scale', part: `motor.${winding}` }, open(`motor.${other}`)];
    const { circuit, at, volts } = held(bare, { slip: 1, startIn: true, edits, severity: scale });
    const { currents } = at.turning;
    const amps = Math.hypot(currents[place]!, currents[place + 1]!);
    const ohms = Math.hypot(...standstillOhms(circuit, winding, 1)!);
    expect(volts(lead === 'black' ? 'motor.B' : 'motor.R', 'motor.C') / amps / ohms).toBeCloseTo(1, 5);
  });
});

test('a live circuit and a missing node give no reading', () => {
  const state = faulted(small);
  expect(reading(state, 'capacitance', RUN_CAN, RUN)).toMatchObject({ reason: 'not-a-plant-reading' });
  expect(reading(state, 'capacitance', { between: ['box.tap', 'box.nowhere'] }, OFF)).toMatchObject({
    reason: 'no-such-node',
  });
});

test('with one lead off the capacitor alone is read, as before', () => {
  const at = { across: 'box.start-capacitor' };
  expect(1e6 * number(faulted(small), 'capacitance', at, OFF)).toBeCloseTo(115.5, 6);
});
