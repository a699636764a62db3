import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyWaterEdits } from '../../../src/plant/water/edits.ts';
import { deliver } from '../../../src/plant/water/operate.ts';
import { pressureAfter } from '../../../src/plant/water/rest.ts';
import { pressureWith, type Tank, waterIn } from '../../../src/plant/water/tank.ts';
import { pumpingLevel } from '../../../src/plant/water/well.ts';
import { type WaterEdit, waterQuestion } from '../../../src/schema/water.ts';
import { of } from '../../../src/units/units.ts';
import { stateOf, usual } from './usual.ts';

/** Laws that hold whatever the numbers are; one fixed seed. */
const RUNS = { seed: 20260725, numRuns: 60 };
const share = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const pressure = share(0, of(90, 'psi'));

/** Any edit with a severity that fits it. */
const fault: fc.Arbitrary<{ edits: readonly WaterEdit[]; severity: number }> = fc.oneof(
  fc.record({ edits: fc.constant([{ edit: 'head' }] as const), severity: share(0.2, 1) }),
  fc.record({ edits: fc.constant([{ edit: 'intake' }] as const), severity: share(0.1, 1) }),
  fc.record({ edits: fc.constant([{ edit: 'gas' }] as const), severity: share(0, 0.5) }),
  fc.record({ edits: fc.constant([{ edit: 'yield' }] as const), severity: share(0.02, 1) }),
  fc.record({ edits: fc.constant([{ edit: 'level' }] as const), severity: share(0, 1.4) }),
  fc.record({ edits: fc.constant([{ edit: 'air' }] as const), severity: share(0.01, 1) }),
  fc.record({
    edits: fc
      .constantFrom('riser', 'pitless', 'buried', 'check', 'tank', 'house')
      .map((at): WaterEdit[] => [{ edit: 'leak', at: at as 'riser', depth: of(60, 'ft') }]),
    severity: share(of(0.05, 'gpm'), of(9, 'gpm')),
  }),
  fc.record({
    edits: fc
      .constantFrom('line', 'check', 'tank', 'house')
      .map((at): WaterEdit[] => [{ edit: 'close', at: at as 'line' }]),
    severity: fc.constant(1),
  }),
);

describe('the water side', () => {
  test('Boyle there and back', () => {
    const tank = fc.record({
      volume: share(0.02, 1),
      precharge: share(0, 4e5),
      atmosphere: share(7e4, 1.02e5),
    });
    fc.assert(
      fc.property(tank, share(1, 6e5), (one: Tank, above) => {
        const at = one.precharge + above;
        expect(pressureWith(one, waterIn(one, at)) / at).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });

  test('more pressure never gets more flow', () => {
    fc.assert(
      fc.property(fault, pressure, pressure, (one, a, b) => {
        const parts = applyWaterEdits(usual, one);
        const at = { seconds: Infinity, speed: 1 };
        const low = deliver(parts, Math.min(a, b), at);
        const high = deliver(parts, Math.max(a, b), at);
        expect(high.gained).toBeLessThanOrEqual(low.gained + 1e-9);
        expect(high.pumped).toBeLessThanOrEqual(low.pumped + 1e-9);
      }),
      RUNS,
    );
  });

  test('nothing is made of nothing: what the tank gains was pumped, and the well gave it', () => {
    fc.assert(
      fc.property(fault, pressure, (one, at) => {
        const parts = applyWaterEdits(usual, one);
        const given = deliver(parts, at, { seconds: Infinity, speed: 1 });
        expect(given.gained).toBeLessThanOrEqual(given.pumped + 1e-12);
        if (given.pumped === 0 || one.edits[0]?.edit === 'close') return;
        const level = pumpingLevel(parts.well, given.pumped, Infinity);
        expect(given.level).toBeCloseTo(level, 9);
        expect(level).toBeLessThanOrEqual(parts.well.intake + 1e-6);
      }),
      RUNS,
    );
  });

  test('what leaves the tank is what its pressure says it lost', () => {
    fc.assert(
      fc.property(share(of(0.1, 'gpm'), of(4, 'gpm')), share(10, 60), (draw, seconds) => {
        const parts = applyWaterEdits(usual, { edits: [], severity: undefined });
        const from = of(50, 'psi');
        const after = pressureAfter(parts, from, { open: true, draw, seconds });
        const lost = waterIn(parts.tank, from) - waterIn(parts.tank, after);
        expect(lost / (draw * seconds)).toBeCloseTo(1, 6);
      }),
      RUNS,
    );
  });

  test('every question has an answer, and no number is ever NaN', () => {
    fc.assert(
      fc.property(fault, (one) => {
        const state = stateOf(one);
        for (const question of waterQuestion.options) {
          const got = state.read(question);
          expect(got.kind).not.toBe('none');
          if (got.kind === 'value') expect(Number.isFinite(got.value)).toBe(true);
        }
        const load = state.load();
        expect(load).toBeGreaterThanOrEqual(0);
        expect(load).toBeLessThanOrEqual(1.2);
      }),
      { ...RUNS, numRuns: 25 },
    );
  });
});
