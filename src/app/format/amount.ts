import { figure, figures, plain } from './figure.ts';
import { expectedUnit, inNamedUnit, quantityOfUnit, signOf, unitNamed } from './unit.ts';

/** A number and the sign of its unit, apart, so that a screen can set them in two sizes. */
export interface Shown {
  readonly figure: string;
  readonly sign: string;
  /** Both together. */
  readonly text: string;
}

const shown = (text: string, sign: string): Shown => ({
  figure: text,
  sign,
  text: sign === '' ? text : `${text} ${sign}`,
});

/**
 * A reading as it was typed: never rounded, never turned into another unit.
 *
 * @example
 * formatReading(4.7, 'ohm').text // => '4.7 Ω'
 */
export function formatReading(value: number, unit: string): Shown {
  return shown(plain(value), signOf(unit));
}

/**
 * An SI amount that the engine worked out, in the unit a person expects.
 *
 * @param unit a unit of its quantity; the amount may be shown in a larger or smaller one
 *
 * @example
 * formatAmount(1500, 'ohm').text // => '1.5 kΩ'
 */
export function formatAmount(amount: number, unit: string): Shown {
  const known = unitNamed(unit);
  if (known === undefined) return shown(figure(amount), unit);
  const chosen = expectedUnit(quantityOfUnit(known), amount);
  return shown(figure(inNamedUnit(amount, chosen)), signOf(chosen));
}

/** An SI amount in exactly this unit: the parts of one window must share their unit. */
export function formatIn(amount: number, unit: string): Shown {
  const known = unitNamed(unit);
  return known === undefined
    ? shown(figure(amount), unit)
    : shown(figure(inNamedUnit(amount, known)), signOf(known));
}

export interface ShownRange {
  readonly low: string | undefined;
  readonly high: string | undefined;
  readonly sign: string;
  /** The unit both ends are shown in. */
  readonly unit: string;
}

/**
 * Two SI ends in the one unit that the larger of them is expected in.
 *
 * @param ends an absent end is unbounded
 *
 * @example
 * formatRange({ low: 2.41, high: 3.12 }, 'ohm').high // => '3.1'
 * @example
 * formatRange({ low: 2e6 }, 'ohm').sign // => 'MΩ'
 */
export function formatRange(
  ends: { readonly low?: number; readonly high?: number },
  unit: string,
): ShownRange {
  const known = unitNamed(unit);
  const { low, high } = ends;
  const largest = high ?? low ?? 0;
  const chosen = known === undefined ? undefined : expectedUnit(quantityOfUnit(known), largest);
  const number = (amount: number): number => (chosen === undefined ? amount : inNamedUnit(amount, chosen));
  const both = low !== undefined && high !== undefined ? figures(number(low), number(high)) : undefined;
  return {
    low: low === undefined ? undefined : (both?.low ?? figure(number(low))),
    high: high === undefined ? undefined : (both?.high ?? figure(number(high))),
    sign: signOf(chosen ?? unit),
    unit: chosen ?? unit,
  };
}

/**
 * "2.4–3.1 Ω" where both ends are known; nothing where one is open, since "over" and "up to" are words.
 *
 * @example
 * rangeText({ low: 8.1, high: 10.3 }, 'ohm') // => '8.1–10.3 Ω'
 */
export function rangeText(
  ends: { readonly low?: number; readonly high?: number },
  unit: string,
): string | undefined {
  const range = formatRange(ends, unit);
  if (range.low === undefined || range.high === undefined) return undefined;
  return `${range.low}–${range.high} ${range.sign}`;
}
