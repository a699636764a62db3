import { describe, expect, test } from 'vitest';
import type { Motor } from '../../src/schema/motor.ts';
import { inUnit } from '../../src/units/units.ts';
import { catalog } from './support/catalog.ts';

/** The motor rows beside tables for motors in general: plausible, never equal. */
const plates = Object.values(catalog.motors).filter((motor) => motor.auxiliary === undefined);

const horsepower = ({ power }: Motor): number => Math.round(inUnit(power, 'hp') * 100) / 100;

function line(motor: Motor, load: 'fullLoad' | 'serviceFactorLoad'): number {
  const amps = motor[load]?.amps;
  if (amps === undefined) throw new Error(`${motor.id} prints no ${load}`);
  return 'line' in amps ? amps.line : amps.yellow;
}

/**
 * National Electrical Code 430.248 (430-148 in 1999), single-phase full-load amps by horsepower.
 * Source: code-motor-table.
 */
const CODE_230 = { 0.5: 4.9, 0.75: 6.9, 1: 8, 1.5: 10, 2: 12, 3: 17, 5: 28, 7.5: 40, 10: 50 };
const CODE_115 = { 0.5: 9.8 };

function codeAmps(motor: Motor): number | undefined {
  const table: Readonly<Record<string, number>> = motor.volts === 115 ? CODE_115 : CODE_230;
  return table[String(horsepower(motor))];
}

describe('full-load amps beside the code table', () => {
  const known = plates.filter((motor) => codeAmps(motor) !== undefined);

  test('covers all rows up to 10 hp', () => {
    expect(known).toHaveLength(plates.length - 1);
  });

  test.each(known.map((motor) => [motor.id, motor] as const))('%s', (_, motor) => {
    const share = line(motor, 'fullLoad') / (codeAmps(motor) ?? 0);
    // Without a run capacitor the motors are as the code takes them; with one the line current is less.
    const [low, high] = motor.circuit === 'start-and-run' ? [0.68, 1.02] : [0.94, 1.07];
    expect(share).toBeGreaterThan(low);
    expect(share).toBeLessThan(high);
  });

  test('a submersible at its service factor may draw more than the code expects', () => {
    const above = known.filter((motor) => line(motor, 'serviceFactorLoad') > (codeAmps(motor) ?? 0));
    expect(above.map(({ id }) => id)).toContain('2-wire-1hp-230v');
  });
});

/** Locked-rotor kVA per horsepower: E begins at 4.5, R ends at 16. Source: code-letters. */
test.each(plates.map((motor) => [motor.id, motor] as const))(
  'locked rotor of %s carries a code letter from E to R',
  (_, motor) => {
    const kva = ((motor.lockedRotor ?? 0) * motor.volts) / 1000 / horsepower(motor);
    expect(kva).toBeGreaterThan(4.5);
    expect(kva).toBeLessThan(16);
  },
);

/**
 * Power drawn cannot exceed volts times amps of the line, and what leaves by the shaft is less than
 * what enters. Law, no table.
 */
test.each(plates.map((motor) => [motor.id, motor] as const))('watts of %s are possible', (_, motor) => {
  for (const [load, factor] of [
    ['fullLoad', 1],
    ['serviceFactorLoad', motor.serviceFactor ?? 1],
  ] as const) {
    const watts = motor[load]?.watts ?? 0;
    const shaft = motor.power * factor;
    expect(watts).toBeLessThan(motor.volts * line(motor, load));
    expect(shaft / watts).toBeGreaterThan(0.5);
    expect(shaft / watts).toBeLessThan(0.85);
  }
});

/** Current of the red lead with a run capacitor: its volts are 1.0 to 1.7 of the line (plant study). */
test.each(
  plates.filter(({ circuit }) => circuit === 'start-and-run').map((motor) => [motor.id, motor] as const),
)('red amps of %s fit its run capacitor', (_, motor) => {
  const amps = motor.fullLoad?.amps;
  const red = amps !== undefined && 'red' in amps ? amps.red : 0;
  const volts = red / (2 * Math.PI * 60 * (motor.runCapacitor ?? 0));
  expect(volts / motor.volts).toBeGreaterThan(1);
  expect(volts / motor.volts).toBeLessThan(1.8);
});
