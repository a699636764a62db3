import { describe, expect, test } from 'vitest';
import type { PlantInput } from '../../src/plant/types.ts';
import { of } from '../../src/units/units.ts';
import { held, runUp, vectorInput } from './support/vectors.ts';

/**
 * When does a potential relay open, and does it stay open?
 *
 * Values: relay study of the same model (derived), 230 V supply and 0.07 ohm of cable a lead. Speeds
 * move in steps of one percent; volts and amps within 1 %.
 */
function withRelay(motor: '1.5HP' | '3HP', pickUp: number, dropOut: number): PlantInput {
  const plant = vectorInput(motor, 0.07);
  const coil = { ...plant.elements['relay-coil']!, pickUp: of(pickUp, 'V'), dropOut: of(dropOut, 'V') };
  return { ...plant, volts: of(230, 'V'), elements: { ...plant.elements, 'relay-coil': coil } };
}

describe.each([230, 250, 270, 290])('pick-up %d V', (pickUp) => {
  test.each([
    ['1.5HP', 60],
    ['1.5HP', 90],
    ['3HP', 60],
    ['3HP', 90],
  ] as const)('%s with drop-out %d V opens once, at 59 to 86 %% of synchronous speed', (motor, dropOut) => {
    const { end, mode } = runUp(withRelay(motor, pickUp, dropOut)).at;
    expect(mode).toEqual({ starts: true, releases: true });
    expect(end.changes).toBe(1);
    expect(end.opensAt).toBeGreaterThan(0.585);
    expect(end.opensAt).toBeLessThan(0.865);
  });
});

/** How often depends on where in a step the relay is looked at: between four fewer and the printed count. */
test.each([
  ['1.5HP', 190, 19],
  ['1.5HP', 215, 5],
  ['3HP', 190, 27],
  ['3HP', 215, 7],
] as const)(
  '%s with a pick-up of %d V chatters, about %d changes in one run-up',
  (motor, pickUp, printed) => {
    const { changes } = runUp(withRelay(motor, pickUp, 90)).at.end;
    expect(changes).toBeGreaterThanOrEqual(Math.max(2, printed - 4));
    expect(changes).toBeLessThanOrEqual(printed);
  },
);

test('low line delays the opening, a high one hastens it', () => {
  const opens = (volts: number) =>
    runUp({ ...withRelay('1.5HP', 270, 90), volts: of(volts, 'V') }).at.end.opensAt ?? 0;
  expect(opens(200)).toBeGreaterThan(opens(230));
  expect(opens(230)).toBeGreaterThan(opens(260));
});

describe.each([
  ['1.5HP', [143, 195, 264, 289], [48.7, 45.2, 40.5], [126, 146]],
  ['3HP', [162, 213, 276, 298], [76.1, 71.3, 65.9], [141, 162]],
] as const)('%s on the way up', (motor, coilIn, lineIn, coilOut) => {
  const at = (speed: number, startIn: boolean) =>
    held(withRelay(motor, 270, 90), { slip: 1 - speed, startIn });
  const near = (got: number, printed: number) => expect(Math.abs(got / printed - 1)).toBeLessThan(0.01);

  test('coil volts and line amps with the start capacitor in', () => {
    [0, 0.5, 0.75, 0.8].forEach((speed, place) => {
      near(at(speed, true).volts('box.R', 'box.Y'), coilIn[place]!);
    });
    [0, 0.5, 0.75].forEach((speed, place) => {
      near(at(speed, true).amps('box.lead-yellow'), lineIn[place]!);
    });
  });

  test('released at 75 and 80 % of speed, the coil still holds', () => {
    [0.75, 0.8].forEach((speed, place) => {
      near(at(speed, false).volts('box.R', 'box.Y'), coilOut[place]!);
    });
  });
});
