import type { Refusal } from './typed.ts';

/** One unit key. The order of the list is the order on the pad and never changes. */
export interface PadUnit {
  /** `ohm`, `kohm`, … */
  readonly unit: string;
  /** How it is written: Ω. */
  readonly sign: string;
  /** How it is said: ohm. */
  readonly word: string;
  /** Letter of the keyboard, upper case. */
  readonly letter?: string;
}

export interface PadWords {
  /** Name of the whole pad for a screen reader. */
  readonly name: string;
  /** Second line of the expected unit: it is the enter key. */
  readonly enter: string;
  readonly backspace: string;
  /** None where the display cannot be over-range. */
  readonly open: string | undefined;
  readonly unstable: string;
  readonly notTaken: string;
  readonly unsafe: string;
  /** What is said when a key is refused. */
  refused(why: Refusal): string;
}

/** Rows of the pad: the digits fill four. */
const ROWS = 4;

/** Rows that each unit key takes: the expected one all that the others leave, twice as high at least. */
export function rowsOf(units: readonly PadUnit[], expected: string): readonly number[] {
  const others = units.filter(({ unit }) => unit !== expected).length;
  return units.map(({ unit }) => (unit === expected ? Math.max(2, ROWS - others) : 1));
}

/** What a key of a real keyboard means to the pad. */
export type Stroke =
  | { readonly kind: 'type'; readonly key: string }
  | { readonly kind: 'unit'; readonly unit: string }
  | { readonly kind: 'unsafe' }
  | { readonly kind: 'nothing' };

/** Letter that stops the call; a letter that a unit claims goes to the unit. */
export const UNSAFE_LETTER = 'S';

/**
 * @param key as the browser names it
 * @param expected unit that Enter stands for
 */
export function strokeOf(key: string, units: readonly PadUnit[], expected: string): Stroke {
  if (key === 'Enter') return { kind: 'unit', unit: expected };
  if (key === 'Backspace') return { kind: 'type', key };
  if (key.length !== 1 || key === ' ') return { kind: 'nothing' };
  const unit = units.find(({ letter }) => letter === key.toUpperCase());
  if (unit !== undefined) return { kind: 'unit', unit: unit.unit };
  if (key.toUpperCase() === UNSAFE_LETTER) return { kind: 'unsafe' };
  return { kind: 'type', key };
}
