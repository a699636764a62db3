import { describe, expect, test } from 'vitest';
import { bench, benchText } from '../../src/proof/bench.ts';
import { millisecondsOf, perSecond, quantile } from '../../src/proof/clock.ts';
import { catalog } from '../published/support/catalog.ts';

const QUICK = { rounds: 2, millisecondsEach: 20 };

describe('the bench', () => {
  test('measures the plant and a whole call, and says null for what does not exist', async () => {
    let decks = 0;
    const simulator = {
      deck: () => 'deck',
      simulate: async () => {
        decks++;
      },
    };
    const found = await bench({ catalog, simulator, built: '/nowhere', timing: QUICK, sites: 1 });
    for (const key of ['networkSolvesPerSecond', 'equilibriaPerSecond', 'startSequencesPerSecond'] as const)
      expect(found[key]).toBeGreaterThan(10);
    expect(found.networkSolvesPerSecond).toBeGreaterThan(found.equilibriaPerSecond);
    expect(decks).toBeGreaterThan(0);
    expect(found.firstRecommendationMs).toBeGreaterThan(0);
    expect(found.nextCheckMs.p95).toBeGreaterThanOrEqual(found.nextCheckMs.median);
    expect(found.scriptGzipKb).toBeNull();
    expect(benchText(found)).toContain('scriptGzipKb: not measured');
    expect(benchText(found)).toMatch(/^nextCheckMs: median [\d.]+, p95 [\d.]+$/m);
  });

  test('without a simulator there is no figure for it', async () => {
    const found = await bench({ catalog, built: '/nowhere', timing: QUICK, sites: 1 });
    expect(found.ngspiceSolvesPerSecond).toBeNull();
  });
});

describe('the clock', () => {
  test('slower work is done less often', () => {
    const work = (turns: number) => () => {
      let sum = 0;
      for (let n = 0; n < turns; n++) sum += Math.sqrt(n);
      if (sum < 0) throw new Error('never');
    };
    expect(perSecond(work(1e3), QUICK)).toBeGreaterThan(3 * perSecond(work(1e5), QUICK));
  });

  test('milliseconds are counted', () => {
    expect(millisecondsOf(() => {})).toBeLessThan(50);
  });

  test('quantiles come from sorted numbers, and none from none', () => {
    expect(quantile([5, 1, 4, 2, 3], 0.5)).toBe(3);
    expect(quantile([1, 2], 0.95)).toBe(2);
    expect(() => quantile([], 0.5)).toThrow(/measure first/);
  });
});
