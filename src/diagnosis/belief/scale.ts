/**
 * One scale for all numbers: z = asinh(r·v/a)/r, on which the error of the instrument is 1.
 *
 * Near zero it is linear in v/a, far away logarithmic with step r, so that 0.02 Ω and 10⁹ Ω lie on
 * the same line and a difference of z counts meter errors.
 *
 * @source method: variance-stabilising transform for additive and relative error (Rocke & Durbin,
 *   Bioinformatics 19:966, 2003)
 */
export interface ScaleShape {
  /** One standard deviation of the instrument as a share of the value. */
  readonly relative: number;
  /** One standard deviation of the instrument at zero, in the unit of the value. */
  readonly absolute: number;
}

/**
 * @example
 * Math.round(toScale(2.8, { relative: 0.02, absolute: 0.1 }) * 1e4) / 1e4 // => 26.7112
 */
export function toScale(value: number, { relative, absolute }: ScaleShape): number {
  if (relative <= 0) return value / absolute;
  return Math.asinh((relative * value) / absolute) / relative;
}

/** The value that stands at z: the inverse of `toScale`. */
export function fromScale(z: number, { relative, absolute }: ScaleShape): number {
  if (relative <= 0) return z * absolute;
  return (Math.sinh(relative * z) * absolute) / relative;
}
