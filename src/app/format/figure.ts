/**
 * How many figures does a number deserve on a screen? The only rounding of the app.
 *
 * A field meter shows two or three figures that mean something; more would be noise that looks like
 * knowledge. Numbers are printed with a decimal point, as meters do.
 */

/** Decimals for one number: none from 100 on, one from 1 on, two below. */
export function decimalsFor(value: number): number {
  const size = Math.abs(value);
  if (size >= 99.95) return 0;
  return size >= 0.995 ? 1 : 2;
}

/**
 * A number with at most three figures, without trailing zeros. Below 0.005 two significant figures
 * are kept, so that a small drop never prints as nothing.
 *
 * @example
 * figure(241.3) // => '241'
 * @example
 * figure(0.854) // => '0.85'
 * @example
 * figure(0.0031) // => '0.0031'
 */
export function figure(value: number): string {
  const size = Math.abs(value);
  if (size > 0 && size < 0.005) return plain(Number(value.toPrecision(2)));
  return String(Number(value.toFixed(decimalsFor(value))));
}

/**
 * A number as it was typed or stored, neither rounded nor written with an exponent.
 *
 * @example
 * plain(0.0000015) // => '0.0000015'
 */
export function plain(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(12).replace(/\.?0+$/, '') : text;
}

/** The figures of two ends, so that they never print alike when they differ. */
export interface Ends {
  readonly low: string;
  readonly high: string;
}

/**
 * Both ends of a range with the same number of decimals: as many as the lower end deserves, more
 * where the two would print alike.
 *
 * @example
 * figures(2.41, 3.12).low // => '2.4'
 * @example
 * figures(9.84, 12.4).high // => '12.4'
 */
export function figures(low: number, high: number): Ends {
  const most = 4;
  for (let decimals = Math.min(decimalsFor(low), decimalsFor(high)); decimals < most; decimals++) {
    const ends = { low: low.toFixed(decimals), high: high.toFixed(decimals) };
    if (ends.low !== ends.high || low === high) return ends;
  }
  return { low: low.toFixed(most), high: high.toFixed(most) };
}
