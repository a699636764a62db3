import { expect, test } from 'vitest';
import { trackPresence } from '../../../src/app/hooks/presence.ts';

const MINUTE = 60_000;

test('a page that never showed the case was away', () => {
  expect(trackPresence(() => 0).wasAway('a-1', 5)).toBe(true);
});

test('four minutes are no absence, five are', () => {
  let now = 0;
  const presence = trackPresence(() => now);
  presence.seen('a-1');
  now = 4 * MINUTE;
  expect(presence.wasAway('a-1', 5)).toBe(false);
  now = 5 * MINUTE;
  expect(presence.wasAway('a-1', 5)).toBe(true);
});

test('each case has its own absence', () => {
  const presence = trackPresence(() => 0);
  presence.seen('a-1');
  expect(presence.wasAway('b-2', 5)).toBe(true);
});
