import { describe, expect, test } from 'vitest';
import { secondsBetween, steadyCycle } from '../../../src/plant/water/cycle.ts';
import { holeWith, throughHole } from '../../../src/plant/water/pipe.ts';
import { calls, type PressureSwitch, tripsCutOff } from '../../../src/plant/water/pressure-switch.ts';
import { type PumpEnd, pumpHead, shaftShare } from '../../../src/plant/water/pump.ts';
import { pressureWith, type Tank, waterIn, waterPerPressure } from '../../../src/plant/water/tank.ts';
import {
  flowToIntake,
  pumpingLevel,
  recoveryRate,
  recoveryTime,
  storageOf,
  type Well,
} from '../../../src/plant/water/well.ts';
import { of } from '../../../src/units/units.ts';

/** Hand-worked numbers in round units; the working stands in each comment. */
describe('tank', () => {
  const tank: Tank = { volume: 1, precharge: 100e3, atmosphere: 100e3 };

  test('holds water by Boyle, and none below its precharge', () => {
    // 1 · (1 − 200/400) = 0.5
    expect(waterIn(tank, 300e3)).toBeCloseTo(0.5, 12);
    expect(waterIn(tank, 100e3)).toBe(0);
    expect(waterIn(tank, 20e3)).toBe(0);
    expect(waterPerPressure(tank, 20e3)).toBe(0);
  });

  test('a gallon per psi as the trade works it', () => {
    // 85 gal, 28 psi, at 50 psi: 85 · 42.7 / 64.7² = 0.87 gal/psi (derived)
    const house: Tank = { volume: of(85, 'gal'), precharge: of(28, 'psi'), atmosphere: of(14.7, 'psi') };
    expect((waterPerPressure(house, of(50, 'psi')) * of(1, 'psi')) / of(1, 'gal')).toBeCloseTo(0.87, 2);
  });

  test('and back', () => {
    expect(pressureWith(tank, 0.5)).toBeCloseTo(300e3, 6);
    expect(pressureWith(tank, 0)).toBe(100e3);
  });
});

describe('well', () => {
  // One square metre of casing, 0.01 m³/s per metre: time constant 100 s.
  const well: Well = { staticLevel: 10, intake: 30, specificCapacity: 0.01, storage: 1 };

  test('falls to flow over specific capacity, 63 % of it in one time constant', () => {
    expect(pumpingLevel(well, 0.1, Infinity)).toBeCloseTo(20, 9);
    expect(pumpingLevel(well, 0.1, 100)).toBeCloseTo(10 + 10 * (1 - Math.exp(-1)), 9);
    expect(pumpingLevel(well, 0.1, 0)).toBe(10);
  });

  test('gives room times specific capacity for ever, more for a while, nothing when dry', () => {
    expect(flowToIntake(well, Infinity)).toBeCloseTo(0.2, 9);
    expect(flowToIntake(well, 50)).toBeGreaterThan(0.2);
    expect(flowToIntake(well, 0)).toBe(Infinity);
    expect(flowToIntake({ ...well, staticLevel: 30 }, Infinity)).toBe(0);
  });

  test('comes back at once as fast as it gives, half of it in 69 s', () => {
    expect(recoveryRate(well, 20)).toBeCloseTo(0.1, 9);
    expect(recoveryRate(well, 5)).toBe(0);
    expect(recoveryTime(well, 0.5)).toBeCloseTo(69.3, 1);
  });

  test('a six-inch casing', () => {
    expect(storageOf(0.1524)).toBeCloseTo(0.018241, 6);
  });
});

const pump: PumpEnd = {
  classFlow: 1,
  classHead: 75,
  shutOffHead: 100,
  openFlow: 2,
  peakLoadFlow: 1.5,
  deadHeadLoad: 0.6,
  dryLoad: 0.3,
  headFactor: 1,
  flowFactor: 1,
};

describe('pump', () => {
  test('goes through its three points', () => {
    // (1/2)^n = 0.25: n = 2
    expect(pumpHead(pump, 0, 1)).toBe(100);
    expect(pumpHead(pump, 1, 1)).toBeCloseTo(75, 9);
    expect(pumpHead(pump, 2, 1)).toBeCloseTo(0, 9);
    expect(pumpHead(pump, 2.5, 1)).toBeLessThan(0);
  });

  test('worn it loses head everywhere, blocked it keeps the shut-off', () => {
    expect(pumpHead({ ...pump, headFactor: 0.8 }, 1, 1)).toBeCloseTo(60, 9);
    expect(pumpHead({ ...pump, flowFactor: 0.5 }, 0, 1)).toBe(100);
    expect(pumpHead({ ...pump, flowFactor: 0.5 }, 1, 1)).toBeCloseTo(0, 9);
  });

  test('loads its shaft fully at class flow, most at the peak, least against a shut valve', () => {
    expect(shaftShare(pump, 0, 1)).toBeCloseTo(0.6, 12);
    expect(shaftShare(pump, 1, 1)).toBeCloseTo(1, 12);
    // 0.6 + 0.4 · 1.5 · 1.5 / 2 = 1.05
    expect(shaftShare(pump, 1.5, 1)).toBeCloseTo(1.05, 12);
    expect(shaftShare(pump, 2, 1)).toBeLessThan(1.05);
  });
});

describe('hole', () => {
  test('four times the head lets out twice as much, and outside pressure turns it round', () => {
    const hole = holeWith(1, 10);
    expect(throughHole(hole, 10)).toBeCloseTo(1, 12);
    expect(throughHole(hole, 40)).toBeCloseTo(2, 12);
    expect(throughHole(hole, -10)).toBeCloseTo(-1, 12);
    expect(throughHole(holeWith(1, 0), 10)).toBe(0);
  });
});

describe('pressure switch', () => {
  const at: PressureSwitch = { cutIn: 30, cutOut: 50, cutOff: 20, cutOffOpen: false, feels: undefined };

  test('calls at cut-in, stops at cut-out, stays as it was between', () => {
    expect(calls(at, 30, false)).toBe(true);
    expect(calls(at, 50, true)).toBe(false);
    expect(calls(at, 40, true)).toBe(true);
    expect(calls(at, 40, false)).toBe(false);
  });

  test('feels what its tube brings', () => {
    expect(calls({ ...at, feels: 45 }, 0, false)).toBe(false);
    expect(calls({ ...at, feels: 5 }, 80, true)).toBe(true);
  });

  test('a latched cut-off never calls, and falls below its setting', () => {
    expect(calls({ ...at, cutOffOpen: true }, 0, true)).toBe(false);
    expect(tripsCutOff(at, 19)).toBe(true);
    expect(tripsCutOff(at, 21)).toBe(false);
    expect(tripsCutOff({ ...at, cutOff: undefined }, 0)).toBe(false);
  });
});

describe('cycle', () => {
  test('a draw of all that is given never fills', () => {
    expect(steadyCycle({ drawdown: 10, delivery: 2, draw: 2 })).toEqual({ on: Infinity, off: 5 });
    expect(steadyCycle({ drawdown: 10, delivery: 2, draw: 0 })).toEqual({ on: 5, off: Infinity });
  });

  test('a flow that changes with pressure is summed, one that stops never ends', () => {
    const perPressure = () => 2;
    expect(secondsBetween({ from: 0, to: 10, perPressure }, () => 4)).toBeCloseTo(5, 9);
    // ∫ 2/(10 + p) dp from 0 to 10 = 2 ln 2
    expect(secondsBetween({ from: 0, to: 10, perPressure }, (p) => 10 + p)).toBeCloseTo(2 * Math.LN2, 5);
    expect(secondsBetween({ from: 0, to: 10, perPressure }, (p) => 5 - p)).toBe(Infinity);
  });
});
