import { describe, expect, test } from 'vitest';
import { clopperPearson, upper95 } from '../../src/proof/prove/statistics.ts';

/**
 * Exact 95 % intervals of a share, as printed: Newcombe, "Two-sided confidence intervals for the single
 * proportion", Statist. Med. 17:857 (1998), table I, method 5 (Clopper–Pearson).
 */
describe.each([
  { k: 81, n: 263, low: 0.2527, high: 0.3676 },
  { k: 15, n: 148, low: 0.0578, high: 0.1617 },
  { k: 0, n: 20, low: 0, high: 0.1684 },
  { k: 1, n: 29, low: 0.0009, high: 0.1776 },
])('$k of $n', ({ k, n, low, high }) => {
  const found = clopperPearson(k, n, 0.95);
  test('lower end', () => expect(found.low).toBeCloseTo(low, 4));
  test('upper end', () => expect(found.high).toBeCloseTo(high, 4));
});

describe('where the interval has a closed form', () => {
  test.each([10, 3000, 10_000])('none of %i', (n) => {
    expect(upper95(0, n)).toBeCloseTo(1 - 0.025 ** (1 / n), 9);
    expect(clopperPearson(n, n, 0.95).low).toBeCloseTo(0.025 ** (1 / n), 9);
  });
});
