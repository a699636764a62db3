import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inUnit,
  of,
  type Quantity,
  type QuantityName,
  type Range,
  UNITS,
  type UnitName,
  unitsOf,
} from '../../src/units/units.ts';

const names = Object.keys(UNITS) as UnitName[];

describe('a printed value becomes SI', () => {
  test.each([
    [1.5, 'kohm', 1500],
    [20, 'Mohm', 20e6],
    [35, 'uF', 35e-6],
    [250, 'ft', 76.2], // 0.3048 m a foot, exactly
    [4, 'in', 0.1016],
    [50, 'degF', 10], // (50 − 32) × 5/9
    [-40, 'degF', -40],
    [2, 'min', 120],
    [6, '%', 0.06],
  ] as const)('%d %s', (value, unit, expected) => {
    expect(of(value, unit)).toBeCloseTo(expected, 9);
  });

  test('2.72 ohm per 1000 ft is 8.92 milliohm a metre', () => {
    expect(of(2.72, 'ohm/kft')).toBeCloseTo(2.72 / 304.8, 12);
  });

  test('one horsepower is 550 foot-pounds a second', () => {
    // 550 × 0.3048 m × 4.4482216 N = 745.6999 W
    expect(of(1, 'hp')).toBeCloseTo(550 * 0.3048 * 4.4482216152605, 3);
  });

  test('a psi is the weight of a pound on a square inch', () => {
    expect(of(1, 'psi')).toBeCloseTo(4.4482216152605 / 0.0254 ** 2, 2);
  });

  test('a gallon is 231 cubic inches', () => {
    expect(of(1, 'gal')).toBeCloseTo(231 * 0.0254 ** 3, 8);
    expect(of(60, 'gpm')).toBeCloseTo(231 * 0.0254 ** 3, 8);
  });
});

describe('a value that is no quantity is refused', () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%d', (value) => {
    expect(() => of(value, 'ohm')).toThrow(`units: ${value} ohm is not a finite quantity`);
  });
});

test('what goes in comes out, in every unit', () => {
  fc.assert(
    fc.property(fc.constantFrom(...names), fc.double({ min: -1e6, max: 1e6, noNaN: true }), (unit, value) => {
      const quantity = of(value, unit) as Quantity<QuantityName>;
      const back = inUnit(quantity as Quantity<'resistance'>, unit as 'ohm');
      expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
    }),
    { seed: 20260301, numRuns: 300 },
  );
});

test('every unit is listed under its quantity, once', () => {
  const quantities = [...new Set(names.map((name) => UNITS[name].quantity))];
  expect(quantities.flatMap((quantity) => unitsOf(quantity)).sort()).toEqual([...names].sort());
});

test('types keep quantities apart', () => {
  const volts: Quantity<'voltage'> = of(230, 'V');
  // @ts-expect-error volts are not ohms
  const ohms: Quantity<'resistance'> = volts;
  // @ts-expect-error a bare number measures nothing
  const amps: Quantity<'current'> = 8;
  // @ts-expect-error an ohm is not a unit of volts
  const printed = inUnit(volts, 'ohm');
  // @ts-expect-error no such unit
  expect(() => of(1, 'furlong')).toThrow();
  // @ts-expect-error the ends of a range are one quantity
  const range: Range<'voltage'> = { low: volts, high: of(3, 'A') };
  const length: Quantity<'length'> = of(3, 'ft');
  expect([ohms, amps, printed, range.high, length]).toHaveLength(5);
});
