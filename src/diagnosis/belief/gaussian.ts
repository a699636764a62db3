import { below, truncated } from './normal.ts';

/**
 * The small Gaussian that a piece of belief carries over what is unknown, and how one reading moves it.
 *
 * x ~ N(mean, covariance); a reading on the common scale is z = centre + slopes·x + noise of variance 1.
 * An outlier term keeps one misreading from settling a case.
 *
 * @source method: Kalman, Trans. ASME J. Basic Eng. 82:35 (1960), one scalar measurement at a time;
 *   mixture with a flat outlier density as in robust regression (Box & Tiao, Biometrika 55:119, 1968)
 */
export interface Gaussian {
  readonly mean: Float64Array;
  /** Row-major, symmetric. */
  readonly covariance: Float64Array;
}

/** What a piece says a reading will be: z = centre + slopes·x, each in meter errors. */
export interface Line {
  readonly centre: number;
  readonly slopes: Float64Array;
}

export interface Moved {
  readonly gaussian: Gaussian;
  readonly logLikelihood: number;
}

export function standard(size: number): Gaussian {
  const covariance = new Float64Array(size * size);
  for (let i = 0; i < size; i++) covariance[i * size + i] = 1;
  return { mean: new Float64Array(size), covariance };
}

/** Prediction of a line under a Gaussian: its centre, its variance (noise included) and P·slopes. */
export function project(
  gaussian: Gaussian,
  line: Line,
): { centre: number; variance: number; gain: Float64Array } {
  const { mean, covariance } = gaussian;
  const size = mean.length;
  const gain = new Float64Array(size);
  let centre = line.centre;
  let variance = 1;
  for (let i = 0; i < size; i++) {
    const slope = line.slopes[i]!;
    centre += slope * mean[i]!;
    let sum = 0;
    for (let j = 0; j < size; j++) sum += covariance[i * size + j]! * line.slopes[j]!;
    gain[i] = sum;
    variance += slope * sum;
  }
  return { centre, variance, gain };
}

/**
 * A number was read at z.
 *
 * @param misreading share of readings that are nonsense, spread evenly over 60 meter errors
 */
export function observe(gaussian: Gaussian, line: Line, reading: { z: number; misreading: number }): Moved {
  const { centre, variance, gain } = project(gaussian, line);
  const distance = reading.z - centre;
  const fit =
    ((1 - reading.misreading) * Math.exp((-0.5 * distance * distance) / variance)) /
    Math.sqrt(2 * Math.PI * variance);
  const stray = reading.misreading / 60;
  const trust = fit / (fit + stray);
  return {
    gaussian: moved(gaussian, gain, { step: (trust * distance) / variance, shrink: trust / variance }),
    logLikelihood: Math.log(fit + stray),
  };
}

/**
 * The display showed over-range: the value lies above `top`.
 * An open reading that the piece does not predict still has the misreading share.
 */
export function observeOver(
  gaussian: Gaussian,
  line: Line,
  reading: { top: number; misreading: number },
): Moved {
  const { centre, variance, gain } = project(gaussian, line);
  const deviation = Math.sqrt(variance);
  const alpha = (centre - reading.top) / deviation;
  const share = below(alpha);
  const logLikelihood = Math.log((1 - reading.misreading) * share + 0.3 * reading.misreading);
  if (share < 0.02 || share > 0.98) return { gaussian, logLikelihood };
  const { shift, loss } = truncated(alpha, true);
  return {
    gaussian: moved(gaussian, gain, { step: shift / deviation, shrink: loss / variance }),
    logLikelihood,
  };
}

/** The Gaussian given that mean0 + slopes·x lies above (or below) zero, noise-free. */
export function onSide(
  gaussian: Gaussian,
  margin: Line,
  above: boolean,
): { gaussian: Gaussian; share: number } {
  const { centre, variance, gain } = project(gaussian, margin);
  const deviation = Math.sqrt(Math.max(variance - 1, 1e-12));
  const { share, shift, loss } = truncated(centre / deviation, above);
  return {
    gaussian: moved(gaussian, gain, { step: shift / deviation, shrink: loss / (deviation * deviation) }),
    share,
  };
}

function moved(gaussian: Gaussian, gain: Float64Array, by: { step: number; shrink: number }): Gaussian {
  const size = gain.length;
  const mean = Float64Array.from(gaussian.mean);
  const covariance = Float64Array.from(gaussian.covariance);
  for (let i = 0; i < size; i++) {
    mean[i] = mean[i]! + by.step * gain[i]!;
    for (let j = 0; j < size; j++)
      covariance[i * size + j] = covariance[i * size + j]! - by.shrink * gain[i]! * gain[j]!;
  }
  return { mean, covariance };
}
