import { describe, expect, test } from 'vitest';
import {
  formatAmount,
  formatIn,
  formatRange,
  formatReading,
  rangeText,
} from '../../../src/app/format/amount.ts';
import { figure, figures, plain } from '../../../src/app/format/figure.ts';
import { inHundred } from '../../../src/app/format/share.ts';
import { formatDay, formatDayAndTime, formatMinutes } from '../../../src/app/format/time.ts';
import { expectedUnit, signOf } from '../../../src/app/format/unit.ts';

describe('figures', () => {
  test.each([
    [241.3, '241'],
    [99.97, '100'],
    [11.18, '11.2'],
    [4.7, '4.7'],
    [1, '1'],
    [0.998, '1'],
    [0.854, '0.85'],
    [0, '0'],
    [0.0031, '0.0031'],
    [-0.08, '-0.08'],
  ] as const)('%d prints as %s', (value, text) => {
    expect(figure(value)).toBe(text);
  });
  test('two ends never print alike when they differ', () => {
    expect(figures(2.41, 2.44)).toEqual({ low: '2.41', high: '2.44' });
    expect(figures(240.2, 240.4)).toEqual({ low: '240.2', high: '240.4' });
    expect(figures(5, 5)).toEqual({ low: '5.0', high: '5.0' });
  });
  test('a typed number is never rounded nor written with an exponent', () => {
    expect(plain(240.123456)).toBe('240.123456');
    expect(plain(0.0000015)).toBe('0.0000015');
  });
});

describe('units that people expect', () => {
  test.each([
    ['resistance', 999, 'ohm'],
    ['resistance', 1000, 'kohm'],
    ['resistance', 20e3, 'kohm'],
    ['resistance', 500e3, 'Mohm'],
    ['voltage', 0.2, 'V'],
    ['current', 11, 'A'],
    ['capacitance', 1.05e-4, 'uF'],
    ['length', 60, 'ft'],
    ['pressure', 2e5, 'psi'],
  ] as const)('%s of %d in %s', (quantity, amount, unit) => {
    expect(expectedUnit(quantity, amount)).toBe(unit);
  });
  test('a quantity nobody shows is a mistake of the program', () => {
    expect(() => expectedUnit('torque', 1)).toThrow(/format: no unit is expected for torque/);
  });
  test('signs', () => {
    expect(['ohm', 'Mohm', 'uF', 'V', 'psi', 'unheard-of'].map(signOf)).toEqual([
      'Ω',
      'MΩ',
      'µF',
      'V',
      'psi',
      'unheard-of',
    ]);
  });
});

describe('amounts and ranges', () => {
  test('a reading stays as typed, in its unit', () => {
    expect(formatReading(0.5, 'Mohm').text).toBe('0.5 MΩ');
    expect(formatReading(4700, 'ohm').text).toBe('4700 Ω');
  });
  test('an SI amount goes to the expected unit', () => {
    expect(formatAmount(4700, 'ohm').text).toBe('4.7 kΩ');
    // 1 psi = 6894.757 Pa
    expect(formatAmount(344_737.85, 'Pa').text).toBe('50 psi');
    // 1 ft = 0.3048 m
    expect(formatAmount(60.96, 'm').text).toBe('200 ft');
    expect(formatAmount(112e-6, 'F').text).toBe('112 µF');
  });
  test('a part of a window stays in the unit of the window', () => {
    expect(formatIn(1500, 'ohm').text).toBe('1500 Ω');
  });
  test('both ends share one unit', () => {
    expect(rangeText({ low: 2.41, high: 3.12 }, 'ohm')).toBe('2.4–3.1 Ω');
    expect(rangeText({ low: 900, high: 1100 }, 'ohm')).toBe('0.9–1.1 kΩ');
    expect(rangeText({ low: 105e-6, high: 126e-6 }, 'F')).toBe('105–126 µF');
  });
  test('an open end is left to words', () => {
    expect(rangeText({ low: 2e6 }, 'ohm')).toBeUndefined();
    expect(formatRange({ low: 2e6 }, 'ohm')).toMatchObject({ low: '2', high: undefined, sign: 'MΩ' });
    expect(formatRange({ high: 0.1 }, 'V')).toMatchObject({ low: undefined, high: '0.1', sign: 'V' });
  });
});

describe('time and chance', () => {
  test.each([
    [0, '0 min'],
    [0.4, '1 min'],
    [14.4, '14 min'],
    [89, '89 min'],
    [90, '1 h 30 min'],
    [120, '2 h'],
  ] as const)('%d minutes', (minutes, text) => {
    expect(formatMinutes(minutes)).toBe(text);
  });
  test('days in the language', () => {
    expect(formatDay('en-US', '2025-03-09T10:04:00Z', 'UTC')).toBe('Mar 9, 2025');
    expect(formatDayAndTime('en-GB', '2025-03-09T10:04:00Z', 'UTC')).toMatch(/9 Mar 2025.*10:04/);
  });
  test('no clock, no date', () => {
    expect(formatDay('en', undefined)).toBe('');
    expect(formatDayAndTime('en', 'yesterday')).toBe('');
  });
  test('a chance is never called nothing or certain when it is not', () => {
    expect([0.714, 0.9987, 1, 0.006, 0.004].map(inHundred)).toEqual([71, 99, 100, 1, undefined]);
  });
});
