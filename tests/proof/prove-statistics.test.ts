import { describe, expect, test } from 'vitest';
import { shareOut } from '../../src/proof/prove/jobs.ts';
import { randomFrom, seedOf } from '../../src/proof/prove/random.ts';
import { calibration, clopperPearson, mean } from '../../src/proof/prove/statistics.ts';

describe('calibration by tenth', () => {
  const claims = [
    { stated: 0.93, right: true },
    { stated: 0.97, right: false },
    { stated: 1, right: true },
    { stated: 0.9, right: true },
    { stated: 0.41, right: false },
    { stated: 0.49, right: true },
  ];

  test('every claim is in one bin, and certainty is in the last', () => {
    // 0.41 and 0.49 in the fifth tenth; 0.9, 0.93, 0.97 and 1 in the tenth
    expect(calibration(claims)).toEqual([
      { stated: expect.closeTo(0.45, 9), held: 0.5, n: 2 },
      { stated: expect.closeTo(0.95, 9), held: 0.75, n: 4 },
    ]);
  });

  test('somebody who claims too much is seen to', () => {
    const boast = Array.from({ length: 10 }, (_, n) => ({ stated: 0.99, right: n < 7 }));
    const [bin] = calibration(boast);
    expect(bin!.stated - bin!.held).toBeGreaterThan(0.25);
  });

  test('of nothing there are no bins', () => {
    expect(calibration([])).toEqual([]);
    expect(mean([])).toBeNaN();
  });
});

describe('bounds of a share', () => {
  test('hold what was seen, and shrink with more of it', () => {
    const few = clopperPearson(3, 30, 0.95);
    const many = clopperPearson(300, 3000, 0.95);
    expect(few.low).toBeLessThan(0.1);
    expect(few.high).toBeGreaterThan(0.1);
    expect(many.high - many.low).toBeLessThan((few.high - few.low) / 5);
  });

  test('what cannot have been counted is refused', () => {
    expect(() => clopperPearson(1, 0, 0.95)).toThrow(/count first/);
    expect(() => clopperPearson(5, 4, 0.95)).toThrow(/count first/);
  });
});

describe('chance that repeats', () => {
  test('the same seed draws the same, another draws other', () => {
    const draw = (seed: number) => Array.from({ length: 5 }, randomFrom(seed).next);
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
    expect(seedOf('a', 'bc')).not.toBe(seedOf('ab', 'c'));
  });

  test('normal draws have mean 0 and deviation 1', () => {
    const { normal } = randomFrom(1);
    const draws = Array.from({ length: 20_000 }, normal);
    // standard error of the mean 1/√20000 = 0.007, of the variance √(2/20000) = 0.01
    expect(Math.abs(mean(draws))).toBeLessThan(0.03);
    expect(Math.abs(mean(draws.map((one) => one * one)) - 1)).toBeLessThan(0.04);
  });

  test('weights are drawn in proportion', () => {
    const random = randomFrom(2);
    const counts = [0, 0, 0];
    for (let n = 0; n < 10_000; n++) counts[random.weighted([1, 0, 3])]!++;
    expect(counts[1]).toBe(0);
    expect(counts[0]! / 10_000).toBeCloseTo(0.25, 1);
    expect(() => random.weighted([0, 0])).toThrow(/no weight/);
  });
});

test('shares are whole, sum to what is shared out, and follow the weights', () => {
  const shares = shareOut([1, 2, 0, 7], 100);
  expect(shares).toEqual([10, 20, 0, 70]);
  const odd = shareOut([1, 1, 1], 100);
  expect(odd.reduce((sum, one) => sum + one, 0)).toBe(100);
  expect(Math.max(...odd) - Math.min(...odd)).toBeLessThanOrEqual(1);
});
