import { describe, expect, test } from 'vitest';
import { inUnit } from '../../src/units/units.ts';
import { catalog } from './support/catalog.ts';
import { copperAt, gaugeMils } from './support/copper.ts';

/** The cable ohms of the content against other people's tables. */
const conductor = (id: string) => {
  const found = catalog.conductors[id];
  if (found === undefined) throw new Error(`no conductor ${id}`);
  const perKft = inUnit(found.perLength, 'ohm/kft');
  return { ...found, perKft, low: perKft * found.spread.low, high: perKft * found.spread.high };
};

/** A printed value, brought to the temperature of our table, lies within the spread that we allow. */
function expectWithin(id: string, ohmsPerKft: number): void {
  const { low, high } = conductor(id);
  expect(ohmsPerKft).toBeGreaterThanOrEqual(low);
  expect(ohmsPerKft).toBeLessThanOrEqual(high);
}

/**
 * National Electrical Code, chapter 9, table 8: DC ohms per 1000 ft at 75 °C, uncoated copper.
 * Source: code-conductor-table.
 */
const TABLE_8 = [
  { gauge: 14, solid: 3.07, stranded: 3.14 },
  { gauge: 12, solid: 1.93, stranded: 1.98 },
  { gauge: 10, solid: 1.21, stranded: 1.24 },
  { gauge: 8, solid: 0.764, stranded: 0.778 },
  { gauge: 6, stranded: 0.491 },
  { gauge: 4, stranded: 0.308 },
  { gauge: 3, stranded: 0.245 },
  { gauge: 2, stranded: 0.194 },
] as const;

describe('code table of conductor properties', () => {
  test.each(TABLE_8)('AWG $gauge', ({ gauge, stranded, ...rest }) => {
    const { temperature } = conductor(`copper-${gauge}`);
    const cooled = (ohms: number): number => copperAt(ohms, { from: 75, to: temperature });
    expectWithin(`copper-${gauge}`, cooled(stranded));
    if ('solid' in rest) expectWithin(`copper-${gauge}`, cooled(rest.solid));
  });

  test('uncooled it would not fit: the temperature matters', () => {
    expect(() => expectWithin('copper-14', 3.14)).toThrow();
  });
});

/**
 * A second pump maker: ohms of both conductors, per foot, here times 1000. Its rounding is why the
 * spread reaches down to 0.88. Source: pump-service-manual.
 */
test.each([
  [14, 5.0],
  [12, 3.2],
  [10, 2.0],
  [8, 1.3],
  [6, 0.8],
  [4, 0.5],
  [2, 0.3],
] as const)('second maker, AWG %d', (gauge, pair) => {
  expectWithin(`copper-${gauge}`, pair / 2);
});

/** Solid copper at room temperature, ohms per 1000 ft. Source: wire-resistance-page. */
test.each([
  [14, 2.525],
  [12, 1.588],
] as const)('wire table of a test-equipment maker, AWG %d', (gauge, ohms) => {
  expectWithin(`copper-${gauge}`, copperAt(ohms, { from: 20, to: 10 }));
});

describe('temperature of copper', () => {
  test('20 to 75 °C by the coefficient 0.00393 of standard copper', () => {
    // Source: copper-handbook. 1.588 · (1 + 0.00393 · 55) = 1.931
    expect(copperAt(1.588, { from: 20, to: 75 })).toBeCloseTo(1.931, 2);
  });

  test.each([
    // Source: code-conductor-note. R2 = R1 [1 + 0.00323 (T2 − 75)]
    [3.14, 2.582],
    [1.98, 1.628],
    [0.491, 0.404],
    [0.194, 0.1595],
  ])('%d ohm at 75 °C is %d ohm at 20 °C', (hot, cold) => {
    expect(copperAt(hot, { from: 75, to: 20 }) / cold).toBeCloseTo(1, 2);
  });

  test('there and back again is where it began', () => {
    expect(copperAt(copperAt(2.72, { from: 10, to: 60 }), { from: 60, to: 10 })).toBeCloseTo(2.72, 12);
  });
});

describe('wire gauge', () => {
  test.each([
    // Diameters in mils. Sources: wire-resistance-page (14, 12), wire-gauge-standard (the others)
    [14, 64.08],
    [12, 80.81],
    [10, 101.9],
    [8, 128.49],
    [6, 162.02],
    [4, 204.31],
    [2, 257.63],
  ] as const)('AWG %d is %d mils', (gauge, mils) => {
    expect(gaugeMils(gauge) / mils).toBeCloseTo(1, 3);
  });

  test('the ohms of the table follow the area of the wire', () => {
    const perArea = Object.values(catalog.conductors)
      .filter(({ metal }) => metal === 'copper')
      .map(({ id, gauge }) => conductor(id).perKft * gaugeMils(gauge) ** 2);
    // Source: copper-handbook. Standard copper: 10.371 ohm · circular mil / ft at 20 °C, 2 % more for strands, cooled to 10 °C.
    const standard = copperAt(10.371 * 1.02, { from: 20, to: 10 }) * 1000;
    for (const product of perArea) {
      expect(product / standard).toBeGreaterThan(0.95);
      expect(product / standard).toBeLessThan(1.15);
    }
  });

  test('aluminium is copper divided by 0.61, as two makers print', () => {
    for (const gauge of [14, 12, 10, 8, 6, 4, 3, 2]) {
      const ratio = conductor(`copper-${gauge}`).perKft / conductor(`aluminium-${gauge}`).perKft;
      expect(ratio).toBeCloseTo(0.61, 3);
    }
  });

  test('a loop of two conductors is the pair that the maker prints', () => {
    // Source: motor-manual-2007, table 45A: ohms per 100 ft of two conductors at 50 °F.
    const printed = { 14: 0.544, 12: 0.338, 10: 0.214, 8: 0.135, 6: 0.082, 4: 0.052, 3: 0.041, 2: 0.032 };
    for (const [gauge, pair] of Object.entries(printed)) {
      expect((conductor(`copper-${gauge}`).perKft * 2) / 10).toBeCloseTo(pair, 6);
    }
  });
});
