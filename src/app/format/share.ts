/**
 * A probability in hundredths, as people say it. A chance that is there but small is never called
 * nothing, and one short of certain is never called certain.
 *
 * @returns undefined below half of one in a hundred: the screen says "under 1 in 100"
 *
 * @example
 * inHundred(0.714) // => 71
 * @example
 * inHundred(0.9987) // => 99
 */
export function inHundred(probability: number): number | undefined {
  if (probability < 0.005) return undefined;
  const whole = Math.round(probability * 100);
  return probability < 1 ? Math.min(99, whole) : 100;
}
