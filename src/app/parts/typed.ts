import { UNITS } from '../../units/units.ts';
import { unitNamed } from '../format/unit.ts';

/**
 * What may be typed on the pad? Digits and one point; everything else is refused with a reason that
 * the screen words, so that nothing typed is lost in silence.
 */

/** More digits than any field meter shows. */
export const MOST_DIGITS = 9;

export type Refusal = 'letters' | 'second-point' | 'too-many-digits' | 'too-large' | 'empty';

export interface Typed {
  readonly text: string;
  readonly refused?: Refusal;
}

/**
 * The text after one more key. A decimal comma counts as a point; a leading point gets its zero.
 *
 * @example
 * typeKey('4', ',').text // => '4.'
 * @example
 * typeKey('', '.').text // => '0.'
 * @example
 * typeKey('4', 'x').refused // => 'letters'
 */
export function typeKey(text: string, key: string): Typed {
  if (key === 'Backspace') return { text: text.slice(0, -1) };
  if (key === '.' || key === ',') {
    return text.includes('.') ? { text, refused: 'second-point' } : { text: `${text === '' ? '0' : text}.` };
  }
  if (!/^[0-9]$/.test(key)) return { text, refused: 'letters' };
  if (text.replace('.', '').length >= MOST_DIGITS) return { text, refused: 'too-many-digits' };
  return { text: text === '0' ? key : text + key };
}

/**
 * A pasted text, taken whole or refused whole. An exponent is refused even where it would fit: no
 * meter shows one, so it is likelier a slip than a reading.
 *
 * @example
 * typePasted(' 12,5 ').text // => '12.5'
 * @example
 * typePasted('1e999').refused // => 'too-large'
 */
export function typePasted(pasted: string): Typed {
  const text = pasted.trim().replace(',', '.');
  if (/^\d+(\.\d+)?e\+?\d+$/i.test(text)) return { text: '', refused: 'too-large' };
  if (!/^\d*\.?\d*$/.test(text)) return { text: '', refused: 'letters' };
  if (text.replace('.', '').length > MOST_DIGITS) return { text: '', refused: 'too-many-digits' };
  return { text: text.startsWith('.') ? `0${text}` : text };
}

/** The number that stands typed, or why it is none. */
export type Parsed = { readonly value: number } | { readonly refused: Refusal };

/**
 * @example
 * parseTyped('4.').value // => 4
 * @example
 * parseTyped('1e999').refused // => 'too-large'
 */
export function parseTyped(text: string): Parsed {
  if (text === '' || text === '.') return { refused: 'empty' };
  const { text: clean, refused } = typePasted(text);
  if (refused !== undefined) return { refused };
  const value = Number(clean);
  return Number.isFinite(value) ? { value } : { refused: 'too-large' };
}

/** Ends of the expected window, in SI; an absent end is unbounded. */
export interface WindowEnds {
  readonly low?: number;
  readonly high?: number;
}

/** Two decades off is no fault of the installation that another unit would explain away. */
const FAR_DECADES = 2;
const NEAR_DECADES = 1;

/**
 * The unit that was probably meant, where the typed one puts the value a hundred times or more off
 * its window and another of the pad puts it near. It is offered, never taken.
 *
 * @param value as typed, in `unit`
 * @param window its ends, and the units of the pad to look among
 * @returns the other unit, or nothing
 *
 * @example
 * looksLikeOtherUnit(4.7, 'kohm', { low: 2.4, high: 3.1, among: ['ohm', 'kohm'] }) // => 'ohm'
 * @example
 * looksLikeOtherUnit(4.7, 'ohm', { low: 2.4, high: 3.1, among: ['ohm', 'kohm'] }) // => undefined
 */
export function looksLikeOtherUnit(
  value: number,
  unit: string,
  window: WindowEnds & { readonly among: readonly string[] },
): string | undefined {
  if (value <= 0 || decadesOff(value, unit, window) < FAR_DECADES) return undefined;
  const nearest = window.among
    .filter((other) => other !== unit)
    .map((other) => ({ other, off: decadesOff(value, other, window) }))
    .sort((one, two) => one.off - two.off)[0];
  return nearest !== undefined && nearest.off <= NEAR_DECADES ? nearest.other : undefined;
}

/** How many tenfolds the value lies outside the window; 0 inside, and where the window is unknown. */
function decadesOff(value: number, unit: string, { low, high }: WindowEnds): number {
  const known = unitNamed(unit);
  if (known === undefined) return Number.POSITIVE_INFINITY;
  const amount = value * UNITS[known].factor;
  if (high !== undefined && high > 0 && amount > high) return Math.log10(amount / high);
  if (low !== undefined && low > 0 && amount < low) return Math.log10(low / amount);
  return 0;
}
