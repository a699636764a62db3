import { of, UNITS, type UnitName } from '../units/units.ts';

/**
 * The command line's only door out for numbers, and its only rounding: SI in, the unit of the check
 * out, four figures. A quantity is printed as a case file writes it, `[4.2, "ohm"]`.
 */
const FIGURES = 4;

/**
 * @example
 * figures(0.00012345678) // => 0.0001235
 */
export function figures(value: number): number {
  if (!Number.isFinite(value))
    throw new Error(`cli: ${value} is not a number to print; give a reading kind instead`);
  return Number(value.toPrecision(FIGURES));
}

export type Printed = readonly [number, string];

/**
 * @param value in SI
 *
 * @example
 * quantity(0.00006, 'uF') // => [60, 'uF']
 */
export function quantity(value: number, unit: string): Printed {
  if (!isUnit(unit)) throw new Error(`cli: ${unit} is not a unit; mend the check that reads in it`);
  return [figures(value / of(1, unit)), unit];
}

const isUnit = (text: string): text is UnitName => Object.hasOwn(UNITS, text);

/**
 * A probability, to one in ten thousand.
 *
 * @example
 * share(0.123456) // => 0.1235
 */
export function share(probability: number): number {
  return Math.round(probability * 1e4) / 1e4;
}

/**
 * Minutes, to a tenth.
 *
 * @example
 * minutes(12.3456) // => 12.3
 */
export function minutes(value: number): number {
  return Math.round(value * 10) / 10;
}

/** JSON for people and programs: what fits on a line stays on it. */
export const asJson = (data: unknown): string => `${block(JSON.parse(JSON.stringify(data)), '')}\n`;

const LINE_MOST = 100;

function block(value: unknown, indent: string): string {
  const line = JSON.stringify(value);
  if (typeof value !== 'object' || value === null || indent.length + line.length <= LINE_MOST) return line;
  const inner = `${indent}  `;
  const [open, close] = Array.isArray(value) ? '[]' : '{}';
  const rows = Array.isArray(value)
    ? value.map((one) => block(one, inner))
    : Object.entries(value).map(([key, one]) => `${JSON.stringify(key)}: ${block(one, inner)}`);
  return `${open}\n${rows.map((row) => inner + row).join(',\n')}\n${indent}${close}`;
}
