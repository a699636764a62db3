import { describe, expect, test } from 'vitest';
import {
  looksLikeOtherUnit,
  MOST_DIGITS,
  parseTyped,
  type Typed,
  typeKey,
  typePasted,
} from '../../../src/app/parts/typed.ts';

const typeAll = (keys: string): Typed =>
  [...keys].reduce<Typed>(({ text }, key) => typeKey(text, key), { text: '' });

describe('typing key by key', () => {
  test('digits and a point', () => {
    expect(typeAll('4.7')).toEqual({ text: '4.7' });
    expect(typeAll('.5')).toEqual({ text: '0.5' });
    expect(typeAll('07')).toEqual({ text: '7' });
  });
  test('a decimal comma counts as a point', () => {
    expect(typeAll('12,5')).toEqual({ text: '12.5' });
  });
  test('a letter leaves the text alone and says so', () => {
    expect(typeKey('4.7', 'e')).toEqual({ text: '4.7', refused: 'letters' });
    expect(typeKey('4.7', '-')).toEqual({ text: '4.7', refused: 'letters' });
  });
  test('a second point is refused', () => {
    expect(typeKey('4.7', '.')).toEqual({ text: '4.7', refused: 'second-point' });
    expect(typeKey('4.7', ',')).toEqual({ text: '4.7', refused: 'second-point' });
  });
  test('no more digits than any meter shows', () => {
    const full = '1'.repeat(MOST_DIGITS);
    expect(typeKey(full, '1')).toEqual({ text: full, refused: 'too-many-digits' });
    expect(typeKey(full, '.')).toEqual({ text: `${full}.` });
  });
  test('backspace takes one back, and nothing from nothing', () => {
    expect(typeKey('4.7', 'Backspace')).toEqual({ text: '4.' });
    expect(typeKey('', 'Backspace')).toEqual({ text: '' });
  });
});

describe('a pasted text', () => {
  test('is taken whole', () => {
    expect(typePasted(' 240,5\n')).toEqual({ text: '240.5' });
    expect(typePasted('.25')).toEqual({ text: '0.25' });
  });
  test.each([
    ['1e999', 'too-large'],
    ['1E5', 'too-large'],
    ['4.7 ohm', 'letters'],
    ['Infinity', 'letters'],
    ['-3', 'letters'],
    ['1.2.3', 'letters'],
    ['1234567890', 'too-many-digits'],
  ] as const)('%s is refused whole: %s', (text, refused) => {
    expect(typePasted(text)).toEqual({ text: '', refused });
  });
});

describe('the number that stands', () => {
  test.each([
    ['4.7', 4.7],
    ['4.', 4],
    ['0', 0],
  ] as const)('%s is %d', (text, value) => {
    expect(parseTyped(text)).toEqual({ value });
  });
  test('nothing is no number', () => {
    expect(parseTyped('')).toEqual({ refused: 'empty' });
    expect(parseTyped('1e999')).toEqual({ refused: 'too-large' });
  });
});

describe('another unit is offered', () => {
  const ohms = ['ohm', 'kohm', 'Mohm'];
  const winding = { low: 2.4, high: 3.1, among: ohms };
  test('where the typed one is a thousand times off and another is near', () => {
    expect(looksLikeOtherUnit(2.7, 'kohm', winding)).toBe('ohm');
    expect(looksLikeOtherUnit(4.7, 'kohm', winding)).toBe('ohm');
    expect(looksLikeOtherUnit(30, 'ohm', { low: 2e6, among: ohms })).toBe('Mohm');
    expect(looksLikeOtherUnit(240, 'mV', { low: 228, high: 252, among: ['mV', 'V'] })).toBe('V');
  });
  test('never for what a fault can read', () => {
    expect(looksLikeOtherUnit(4.7, 'ohm', winding)).toBeUndefined();
    expect(looksLikeOtherUnit(90, 'ohm', winding)).toBeUndefined();
    // 0.02 MΩ of insulation is two tenfolds low, and 0.02 of no other unit is near
    expect(looksLikeOtherUnit(0.02, 'Mohm', { low: 2e6, among: ohms })).toBeUndefined();
  });
  test('not without a window, not for nothing', () => {
    expect(looksLikeOtherUnit(4.7, 'kohm', { among: ohms })).toBeUndefined();
    expect(looksLikeOtherUnit(0, 'ohm', winding)).toBeUndefined();
  });
});
