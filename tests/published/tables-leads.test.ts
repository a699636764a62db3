import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leadColours, type PairReading } from '../../src/tables/lead-identification.ts';

type Three = readonly [PairReading, PairReading, PairReading];

const pairs = (a: number, b: number, c: number): Three => [
  { leads: ['1', '2'], ohms: a },
  { leads: ['2', '3'], ohms: b },
  { leads: ['3', '1'], ohms: c },
];

describe('unmarked leads', () => {
  test('the printed example: 6, 2 and 4 ohms', () => {
    // Source: motor-manual-2007, p. 46; another maker prints the same: lead 3 yellow, 1 red, 2 black
    expect(leadColours(pairs(6, 2, 4))).toEqual({ 1: 'red', 2: 'black', 3: 'yellow' });
  });

  test('equal readings decide nothing', () => {
    expect(leadColours(pairs(6, 2, 2))).toBeUndefined();
    expect(leadColours(pairs(6, 6, 2))).toBeUndefined();
  });

  test('three readings of two leads decide nothing', () => {
    const twice: Three = [
      { leads: ['1', '2'], ohms: 6 },
      { leads: ['1', '2'], ohms: 2 },
      { leads: ['1', '2'], ohms: 4 },
    ];
    expect(leadColours(twice)).toBeUndefined();
  });

  test('two pairs measured twice and one never decide nothing', () => {
    const lacking: Three = [
      { leads: ['1', '2'], ohms: 6 },
      { leads: ['1', '2'], ohms: 2 },
      { leads: ['2', '3'], ohms: 4 },
    ];
    expect(leadColours(lacking)).toBeUndefined();
  });

  test('every three-lead motor of any windings and any cable is told right, whatever the numbering', () => {
    const names = fc.constantFrom('yellow', 'black', 'red');
    const order = fc.uniqueArray(names, { minLength: 3, maxLength: 3 });
    const ohms = fc.record({
      main: fc.double({ min: 0.2, max: 6, noNaN: true }),
      ratio: fc.double({ min: 1.2, max: 6, noNaN: true }),
      cable: fc.double({ min: 0, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(order, ohms, (colours, { main, ratio, cable }) => {
        const inside: Readonly<Record<string, number>> = { yellow: 0, black: main, red: main * ratio };
        const between = (one: number, other: number): PairReading => ({
          leads: [String(one), String(other)],
          ohms: (inside[colours[one] ?? ''] ?? 0) + (inside[colours[other] ?? ''] ?? 0) + 2 * cable,
        });
        const told = leadColours([between(0, 1), between(1, 2), between(2, 0)]);
        expect(told).toEqual({ 0: colours[0], 1: colours[1], 2: colours[2] });
      }),
      { seed: 20260301 },
    );
  });
});
