import { describe, expect, test } from 'vitest';
import { setUp } from '../../src/plant/plant.ts';
import type { Edit } from '../../src/schema/fault.ts';
import { faulted, IDLE, number, OFF, RUN, reading } from './support/ask.ts';
import { input, large, type Setting, small, spreads } from './support/inputs.ts';

/** What does a leakage clamp round several conductors show? The phasor sum, which the leak alone makes. */
const LINE = { clamp: ['switch.wire-1', 'switch.wire-2'] };
const leak = (one: string, other: string): Edit => ({ edit: 'leak', nodes: [one, other] });

const milliamps = (setting: Setting, edits: readonly Edit[], ohms: number, site = RUN): number =>
  1000 * number(faulted(setting, edits, { severity: ohms }), 'residual', LINE, site);

describe('clamped round both line wires', () => {
  test('ten amps go and come back: next to nothing is left', () => {
    expect(number(faulted(small), 'amps', { clamp: ['switch.wire-1'] }, RUN)).toBeGreaterThan(8);
    expect(milliamps(small, [], 1)).toBeLessThan(0.02);
  });

  /** 119 V ÷ 10 kΩ = 11.9 mA from either leg, running or not made to run. */
  test.each([
    ['black', leak('lead.B', 'box.G')],
    ['yellow', leak('lead.Y', 'box.G')],
  ])('a leak from %s shows whole', (_, edit) => {
    expect(milliamps(small, [edit], 10e3)).toBeGreaterThan(11.6);
    expect(milliamps(small, [edit], 10e3)).toBeLessThan(12.1);
  });

  /** Coil volts of the red lead run higher than the line: its share is not 120 V. */
  test('a leak from red shows its own volts', () => {
    const state = faulted(small, [leak('lead.R', 'box.G')], { severity: 10e3 });
    const volts = number(state, 'volts', { between: ['lead.R', 'box.G'] }, RUN);
    const expected = volts / 10e3;
    expect(number(state, 'residual', LINE, RUN) / expected).toBeCloseTo(1, 1);
  });

  test('a leak between two leads comes back: nothing is missing', () => {
    expect(milliamps(small, [leak('lead.Y', 'lead.B')], 1000)).toBeLessThan(0.02);
  });

  test('behind an open switch there is nothing to leak, ahead of it there is', () => {
    expect(milliamps(small, [leak('lead.B', 'box.G')], 10e3, IDLE)).toBeLessThan(0.1);
    const ahead = { clamp: ['panel.breaker-1', 'panel.breaker-2'] };
    const state = faulted(small, [leak('panel.D1', 'panel.G')], { severity: 10e3 });
    expect(1000 * number(state, 'residual', ahead, IDLE)).toBeGreaterThan(11.6);
  });

  test('round the three leads of a motor it tells what leaks beyond them', () => {
    const leads = { clamp: ['run.yellow', 'run.black', 'run.red'] };
    const shown = (edit: Edit) =>
      1000 * number(faulted(large, [edit], { severity: 20e3 }), 'residual', leads, RUN);
    expect(shown(leak('motor.B', 'motor.G'))).toBeGreaterThan(5);
    expect(shown(leak('box.L1', 'box.G'))).toBeLessThan(0.05);
  });
});

test('dead is zero, a missing part is no reading, and probes are no clamp', () => {
  const state = faulted(small);
  expect(number(state, 'residual', LINE, OFF)).toBe(0);
  expect(reading(state, 'residual', { clamp: ['box.nowhere'] }, RUN)).toMatchObject({
    reason: 'no-such-node',
  });
  expect(reading(state, 'residual', { between: ['box.L1', 'box.L2'] }, RUN)).toMatchObject({
    reason: 'not-a-plant-reading',
  });
});

test('it needs no motor model: the leak is the same', () => {
  const edits = [leak('lead.B', 'box.G')];
  const bare = setUp(input({ ...small, withoutModel: true }), spreads);
  const state = bare.state({ edits, severity: 10e3 }, {});
  expect(1000 * number(state, 'residual', LINE, RUN)).toBeCloseTo(milliamps(small, edits, 10e3), 1);
});
