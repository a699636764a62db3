import { describe, expect, test } from 'vitest';
import { atmosphereAt } from '../../src/plant/water/column.ts';
import { drawdown, type Tank } from '../../src/plant/water/tank.ts';
import { inUnit, of, type Quantity } from '../../src/units/units.ts';

/** Drawdown of captive-air tanks: gallons, psi, absolute pressure of the place. */
const psi = (value: number): number => of(value, 'psi');
const SEA = psi(14.7);

function gallons(of_: {
  tank: number;
  precharge: number;
  cutIn: number;
  cutOut: number;
  air?: number;
}): number {
  const tank: Tank = {
    volume: of(of_.tank, 'gal'),
    precharge: psi(of_.precharge),
    atmosphere: of_.air ?? SEA,
  };
  return inUnit(drawdown(tank, { from: psi(of_.cutOut), to: psi(of_.cutIn) }) as Quantity<'volume'>, 'gal');
}

describe('worked examples', () => {
  test('85 gal at the sea', () => {
    // Source: tank-drawdown-article, examples 1 and 2. Factor 0.295, 25.1 gal
    expect(gallons({ tank: 85, precharge: 28, cutIn: 30, cutOut: 50 })).toBeCloseTo(25.1, 1);
  });

  test('the same tank at 6000 ft gives more', () => {
    // Source: tank-altitude-article, example 2. 11.8 psi absolute, 26.19 gal (prints 26.1)
    expect(gallons({ tank: 85, precharge: 28, cutIn: 30, cutOut: 50, air: psi(11.8) })).toBeCloseTo(26.19, 1);
  });

  test('and 6000 ft is 11.8 psi of air', () => {
    // Source: tank-altitude-article, example 2
    expect(atmosphereAt(of(6000, 'ft')) / psi(11.8)).toBeCloseTo(1, 2);
  });

  test('a fill of one minute at 10 gpm wants 10 gal of drawdown, which is 33.9 gal of tank on 30/50', () => {
    // Source: pressure-tank-article, drawdown equals one minute of the pump; 10 ÷ 0.2953 = 33.9 gal
    expect(gallons({ tank: 33.9, precharge: 28, cutIn: 30, cutOut: 50 })).toBeCloseTo(10, 1);
  });
});

/** Source: tank-drawdown-article, its procedure; precharge two under cut-in as pressure-tank-article has it. */
describe.each([
  { cutIn: 20, cutOut: 40, sea: 0.3446, high: 0.3618, of: [6.89, 11.03, 15.16, 21.36, 29.63, 41.0] },
  { cutIn: 30, cutOut: 50, sea: 0.2953, high: 0.3081, of: [5.91, 9.45, 12.99, 18.31, 25.39, 35.14] },
  { cutIn: 40, cutOut: 60, sea: 0.2579, high: 0.2678, of: [5.16, 8.25, 11.35, 15.99, 22.18, 30.7] },
] as const)('$cutIn/$cutOut', ({ cutIn, cutOut, sea, high, of: printed }) => {
  const each = { cutIn, cutOut, precharge: cutIn - 2 };

  test('share of the tank', () => {
    expect(gallons({ tank: 1, ...each })).toBeCloseTo(sea, 3);
    expect(gallons({ tank: 1, ...each, air: psi(11.8) })).toBeCloseTo(high, 3);
  });

  test.each([20, 32, 44, 62, 86, 119].map((tank, n) => [tank, printed[n]!] as const))(
    '%d gal gives %d gal',
    (tank, drawn) => {
      expect(gallons({ tank, ...each }) / drawn).toBeCloseTo(1, 2);
    },
  );
});

test('a tank that has lost air gives far less', () => {
  // Source: tank-drawdown-article, its procedure: 86 gal, precharge 10 on 30/50: 14.69 gal
  expect(gallons({ tank: 86, precharge: 10, cutIn: 30, cutOut: 50 })).toBeCloseTo(14.69, 1);
});
