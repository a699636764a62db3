/**
 * Shares, their bounds and their calibration: what the figures of the sweep rest on.
 *
 * @source method: Clopper & Pearson, Biometrika 26:404 (1934); binomial tail by its own sum
 */

/**
 * Upper 95 % confidence bound of a share, both tails counted as half: with `k` of `n` seen, shares above
 * it would have shown `k` or fewer in less than one of forty samples.
 *
 * @example
 * Math.round(upper95(0, 3000) * 1e6) / 1e6 // => 0.001229
 */
export const upper95 = (k: number, n: number): number => clopperPearson(k, n, 0.95).high;

/** Both ends of the exact interval of a share. */
export function clopperPearson(k: number, n: number, confidence: number): { low: number; high: number } {
  if (!(n > 0) || k < 0 || k > n) throw new Error(`prove: ${k} of ${n} is no share; count first`);
  const tail = (1 - confidence) / 2;
  return {
    low: k === 0 ? 0 : bisect((share) => 1 - atMost(k - 1, n, share) < tail),
    high: k === n ? 1 : bisect((share) => atMost(k, n, share) > tail),
  };
}

/** The share at which a condition that holds at 0 stops to hold. */
function bisect(holds: (share: number) => boolean): number {
  let low = 0;
  let high = 1;
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability of at most `k` of `n`; each term from the one before, as logarithms. */
function atMost(k: number, n: number, share: number): number {
  if (share <= 0) return 1;
  if (share >= 1) return k >= n ? 1 : 0;
  let term = n * Math.log1p(-share);
  let sum = Math.exp(term);
  for (let count = 1; count <= k; count++) {
    term += Math.log((n - count + 1) / count) + Math.log(share) - Math.log1p(-share);
    sum += Math.exp(term);
  }
  return Math.min(1, sum);
}

export interface Bin {
  /** Mean probability that was stated. */
  readonly stated: number;
  /** Share that was right. */
  readonly held: number;
  readonly n: number;
}

/** Stated probability against share right, by tenth of the stated one; empty tenths are left out. */
export function calibration(claims: readonly { stated: number; right: boolean }[]): Bin[] {
  const tenths = Array.from({ length: 10 }, (): { stated: number; right: boolean }[] => []);
  for (const claim of claims) tenths[Math.min(9, Math.floor(10 * claim.stated))]?.push(claim);
  return tenths
    .filter((bin) => bin.length > 0)
    .map((bin) => ({
      stated: mean(bin.map((one) => one.stated)),
      held: bin.filter((one) => one.right).length / bin.length,
      n: bin.length,
    }));
}

/** @returns NaN of nothing: a figure that was not measured is left out by who prints it */
export const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
