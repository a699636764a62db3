import { describe, expect, test } from 'vitest';
import { catalog } from './support/catalog.ts';

/**
 * Insulation of motor and cable in the well, 500 V, as measured.
 *
 * Sources: motor-manual-2007, table 45 (2 megohms new, 0.5 to 2 good, below 0.5 damaged), and
 * second-maker-bands (below 0.02 megohm the part has failed).
 */
const MEGOHM = 1e6;

const soundFrom = (id: string): number => (catalog.checks[id]?.band?.low ?? Number.NaN) / MEGOHM;

describe('insulation bands', () => {
  test.each([
    'insulation-system',
    'insulation-two-wire',
    'insulation-downhole',
    'insulation-downhole-two-wire',
  ])('%s is sound from 2 megohms, as the maker prints', (id) => {
    expect(soundFrom(id)).toBeCloseTo(2, 9);
  });

  test.each(['insulation-buried', 'insulation-buried-two-wire'])('%s alone asks for more', (id) => {
    // The same table asks 200 megohms of a new motor without cable, 10 of a used one out of the well.
    expect(soundFrom(id)).toBeGreaterThanOrEqual(10);
    expect(soundFrom(id)).toBeLessThanOrEqual(200);
  });

  test('a sound system of the model reads in the sound band', () => {
    const { resistance = Number.NaN } = catalog.elements.insulation ?? {};
    expect(resistance / MEGOHM).toBeGreaterThan(2);
  });

  test('a ground fault lies in the band of failed parts, a leak in that of damaged ones', () => {
    const { low: leastLeak = 0, high: mostLeak = 0 } = catalog.faults['motor-leaks']?.severity?.span ?? {};
    const { high: mostFault = Number.NaN } = catalog.faults['motor-grounded']?.severity?.span ?? {};
    expect(mostFault / MEGOHM).toBeLessThanOrEqual(0.02);
    expect(mostLeak / MEGOHM).toBeLessThanOrEqual(0.5);
    expect(leastLeak).toBeGreaterThanOrEqual(mostFault);
  });
});
