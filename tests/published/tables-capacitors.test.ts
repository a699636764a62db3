import { describe, expect, test } from 'vitest';
import { resolveSystem } from '../../src/diagnosis/system.ts';
import { conditionsOf } from '../../src/plant/conditions.ts';
import { capacitorImpedance } from '../../src/plant/electrical/elements/capacitor.ts';
import { inUnit, of } from '../../src/units/units.ts';
import { catalog } from './support/catalog.ts';

/** Run capacitors as the plant sees them, against what a technician reads with a clamp and a voltmeter. */
const [choice] = resolveSystem(catalog, {
  box: 'start-and-run-main-overload-in-line',
  motor: '3-wire-1hp-230v-start-and-run',
}).choices;

/** Amps that the plant's capacitor draws at 60 Hz. */
function amps(microfarads: number, volts: number): number {
  const element = catalog.elements['capacitor-run'];
  if (choice === undefined || element === undefined) throw new Error('no such box or capacitor');
  const input = { ...choice.input, runCapacitor: of(microfarads, 'uF') };
  const context = { input, conditions: conditionsOf(input, choice.spreads, {}) };
  const { re, im } = capacitorImpedance({ kind: 'capacitor-run', element, scale: 1 }, context);
  return volts / Math.hypot(re, im);
}

describe('microfarads = 2652 × amps ÷ volts at 60 Hz', () => {
  test('the constant is 1e6 ÷ (2π · 60)', () => {
    // Source: capacitor-page, which prints 2652
    expect(1e6 / (2 * Math.PI * 60)).toBeCloseTo(2652.58, 2);
    expect((35 * 330) / amps(35, 330)).toBeCloseTo(2652.6, 0);
  });

  test.each([
    // Source: capacitor-page, worked by its formula
    [330, 4.35, 34.97],
    [250, 3.3, 35.01],
    [370, 5.02, 35.99],
    // Electric Machinery, example 9.5: 5.196 A at 393.8 V through 35 µF
    [393.78, 5.1958, 35.0],
  ])('%d V and %d A are %d µF', (volts, current, microfarads) => {
    expect(amps(microfarads, volts) / current).toBeCloseTo(1, 3);
  });
});

describe('printed ranges', () => {
  const rows = Object.values(catalog.motors);

  test('start capacitors lie where the trade makes them: 25 to 1400 µF', () => {
    // Source: capacitor-article
    for (const { startCapacitor } of rows) {
      if (startCapacitor === undefined) continue;
      expect(inUnit(startCapacitor.low, 'uF')).toBeGreaterThanOrEqual(25);
      expect(inUnit(startCapacitor.high, 'uF')).toBeLessThanOrEqual(1400);
      // and a printed range is wider than a reading is wrong, but no wider than a quarter
      expect(startCapacitor.high / startCapacitor.low).toBeGreaterThan(1.15);
      expect(startCapacitor.high / startCapacitor.low).toBeLessThan(1.25);
    }
  });

  test('one run capacitor holds 2 to 80 µF; larger rows carry two', () => {
    // Source: capacitor-article
    for (const { runCapacitor, power, auxiliary } of rows) {
      if (runCapacitor === undefined || auxiliary === true) continue;
      expect(inUnit(runCapacitor, 'uF')).toBeGreaterThanOrEqual(2);
      expect(inUnit(runCapacitor, 'uF')).toBeLessThanOrEqual(inUnit(power, 'hp') > 10 ? 160 : 80);
    }
  });
});
