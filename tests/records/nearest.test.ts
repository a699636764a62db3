import { expect, test } from 'vitest';
import { editDistance, nearest } from '../../src/records/nearest.ts';

test.each([
  ['kitten', 'sitting', 3], // k→s, e→i, +g
  ['', 'abc', 3],
  ['same', 'same', 0],
  ['ab', 'ba', 2],
])('%s to %s takes %i changes', (one, other, changes) => {
  expect(editDistance(one, other)).toBe(changes);
  expect(editDistance(other, one)).toBe(changes);
});

test('the nearest id is suggested, the first of two as near, and nothing far off', () => {
  const known = ['ohms-yellow-black', 'ohms-yellow-red', 'amps-line'];
  expect(nearest('ohm-yellow-red', known)).toBe('ohms-yellow-red');
  expect(nearest('bolt', ['colt', 'volt'])).toBe('colt');
  expect(nearest('weather', known)).toBeUndefined();
  expect(nearest('x'.repeat(1e6), known)).toBeUndefined();
});
