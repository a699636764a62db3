import type { Reading } from '../../schema/case.ts';
import { of } from '../../units/units.ts';
import type { ExpectedWindow, JudgedReading, Outcome } from '../types.ts';

/**
 * The only comparison of a reading with what was expected.
 *
 * "None" is a reading of practically nothing where something was expected: a dead pair, no amps.
 * @param noneShare share of the low end of the window under which a volt or an amp counts as none
 */
export function judge(reading: Reading, window: ExpectedWindow, noneShare: number): JudgedReading {
  const judged = { check: window.check, reading };
  if ('notTaken' in reading) return { ...judged, outcome: 'not-taken' };
  if ('unstable' in reading) return { ...judged, outcome: 'unstable' };
  if ('answer' in reading) return { ...judged, outcome: reading.answer };
  if ('open' in reading) return { ...judged, outcome: outcomeOfOpen(window) };
  return { ...judged, ...outcomeOfValue(of(...reading.value), window, noneShare) };
}

/** A number with nothing to compare it with: trees take it as a check that could not be taken. */
export const NOT_JUDGED = 'not-judged';

/** Outcome of a display that shows over-range. */
export function outcomeOfOpen(window: ExpectedWindow): Outcome {
  return window.kind === 'open' || isUnboundedAbove(window) ? 'as-expected' : 'open';
}

/** Outcome of a number in SI, and how far outside its window it lies. */
export function outcomeOfValue(
  value: number,
  window: ExpectedWindow,
  noneShare: number,
): { outcome: Outcome; by?: number } {
  if (window.kind === 'unknown') return { outcome: NOT_JUDGED };
  if (window.kind === 'open') return { outcome: 'low' };
  const { low = 0, high = Number.POSITIVE_INFINITY } = window;
  if (readsVoltsOrAmps(window) && low > 0 && value < noneShare * low)
    return { outcome: 'none', by: low - value };
  if (value < low) return { outcome: 'low', by: low - value };
  if (value > high) return { outcome: 'high', by: value - high };
  return { outcome: 'as-expected' };
}

/** Insulation and the like: over-range is the best there is. */
const isUnboundedAbove = (window: ExpectedWindow): boolean =>
  window.kind === 'range' && window.high === undefined;

const readsVoltsOrAmps = (window: ExpectedWindow): boolean => window.unit === 'V' || window.unit === 'A';
