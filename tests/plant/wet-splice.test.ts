import { expect, test } from 'vitest';
import { faulted, LIFTED, number, SPLIT } from './support/ask.ts';
import { small } from './support/inputs.ts';

/** A wet splice leaks while it is whole; opened and dried it leaves both sides sound. */
const wet = faulted(small, [{ edit: 'leak', nodes: ['well.Y', 'well.G'], untilSplit: true }], {
  severity: 10,
});
const still = faulted(small, [{ edit: 'leak', nodes: ['well.Y', 'well.G'] }], { severity: 10 });
const atBox = { tied: ['lead.Y', 'lead.B', 'lead.R'], to: 'box.G' };
const buried = { tied: ['well.Y', 'well.B', 'well.R'], to: 'well.G' };
const down = { tied: ['drop.Y', 'drop.B', 'drop.R'], to: 'well.G' };

test('a leak in a splice shows at the box', () => {
  expect(number(wet, 'insulation', atBox, LIFTED)).toBeLessThan(20);
});

test('once the splice is open neither side has the leak', () => {
  expect(number(wet, 'insulation', buried, SPLIT)).toBeGreaterThan(1e6);
  expect(number(wet, 'insulation', down, SPLIT)).toBeGreaterThan(1e6);
});

test('a leak in the buried run stays with the run', () => {
  expect(number(still, 'insulation', buried, SPLIT)).toBeLessThan(20);
});
