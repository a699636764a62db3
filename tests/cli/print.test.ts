import { describe, expect, test } from 'vitest';
import { asJson, figures, minutes, quantity, share } from '../../src/cli/print.ts';

describe('the printer', () => {
  test('prints four figures, whatever the size', () => {
    expect([4.20049, 123456, 0.000123456, 0].map(figures)).toEqual([4.2, 123500, 0.0001235, 0]);
  });
  test('prints SI in the unit asked for', () => {
    expect(quantity(2.4e6, 'Mohm')).toEqual([2.4, 'Mohm']);
    expect(quantity(745.6999 / 2, 'hp')).toEqual([0.5, 'hp']);
    expect(quantity(59.04e-6, 'uF')).toEqual([59.04, 'uF']);
  });
  test('refuses what is no number or no unit', () => {
    expect(() => figures(Number.NaN)).toThrow('not a number');
    expect(() => quantity(Number.POSITIVE_INFINITY, 'ohm')).toThrow('not a number');
    expect(() => quantity(1, 'furlong')).toThrow('furlong');
  });
  test('lays JSON out so that it reads and parses back', () => {
    const data = {
      low: [8.419, 'A'],
      gone: undefined,
      from: [{ text: 'x'.repeat(60) }, { text: '"]}\n'.repeat(20) }],
      none: [],
    };
    const text = asJson(data);
    expect(JSON.parse(text)).toEqual({ low: data.low, from: data.from, none: [] });
    expect(text.split('\n')[1]).toBe('  "low": [8.419,"A"],');
  });
  test('rounds probabilities and minutes', () => {
    expect([share(0.99996), share(0.00004), minutes(1.26)]).toEqual([1, 0, 1.3]);
  });
});
