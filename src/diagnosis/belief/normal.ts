/**
 * The normal distribution, as belief needs it: density, tail, and the moments of a truncated one.
 *
 * @source method: Abramowitz & Stegun, Handbook of Mathematical Functions, 7.1.26 for the tail
 *   (absolute error below 1.5e-7); Johnson & Kotz, Continuous Univariate Distributions, 13.10 for
 *   the truncated moments
 */
const ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

/** Density of the standard normal. */
export function density(x: number): number {
  return Math.exp(-0.5 * x * x) / ROOT_TWO_PI;
}

/**
 * Share of the standard normal below x.
 *
 * @example
 * Math.round(below(1.96) * 1000) / 1000 // => 0.975
 */
export function below(x: number): number {
  const t = 1 / (1 + (0.3275911 * Math.abs(x)) / Math.SQRT2);
  const series =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const tail = 0.5 * series * Math.exp(-0.5 * x * x);
  return x >= 0 ? 1 - tail : tail;
}

/** How a normal moves when it is known to lie above (or below) zero. */
export interface Truncation {
  /** Share of the normal that remains. */
  readonly share: number;
  /** Shift of the mean along the unit direction, in standard deviations. */
  readonly shift: number;
  /** Share of the variance along that direction that is lost. */
  readonly loss: number;
}

/**
 * Truncation of N(alpha, 1) at zero.
 *
 * @param alpha mean over standard deviation
 * @param above true keeps the part above zero
 */
export function truncated(alpha: number, above: boolean): Truncation {
  const side = above ? alpha : -alpha;
  const share = below(side);
  if (share < 1e-12) return { share: 0, shift: 0, loss: 0 };
  const ratio = density(side) / share;
  const loss = Math.min(0.999, Math.max(0, ratio * (ratio + side)));
  return { share, shift: above ? ratio : -ratio, loss };
}
