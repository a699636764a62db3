const TRIES = 60;
const SHARE = 1e-11;

/**
 * Where a falling function is nothing, between two ends that hold it.
 *
 * False position with the Illinois change of weight: a handful of steps where the function is smooth,
 * and never worse than halving for long. Where the function stays at nothing up to the far end (a pump
 * that gives nothing above a pressure), the first such place is found by halving.
 *
 * @source method: Dowell & Jarratt, BIT 11:168 (1971)
 * @returns the low end where the function is nowhere above nothing; the high end where it never falls that far
 */
export function rootOf(of: (x: number) => number, ends: { low: number; high: number }): number {
  let { low, high } = ends;
  const enough = SHARE * Math.abs(high - low);
  let above = of(low);
  let below = of(high);
  if (above <= 0) return low;
  if (below > 0) return high;
  if (below === 0) return firstNothing(of, ends);
  let kept = 0;
  for (let n = 0; n < TRIES && high - low > enough; n++) {
    const x = between({ low, high, above, below });
    const got = of(x);
    if (got === 0) return x;
    if (got > 0) {
      if (x - low < enough && kept > 0 && n > 2) return x;
      low = x;
      above = got;
      if (kept > 0) below /= 2;
      kept = 1;
    } else {
      if (high - x < enough && kept < 0 && n > 2) return x;
      high = x;
      below = got;
      if (kept < 0) above /= 2;
      kept = -1;
    }
  }
  return (low + high) / 2;
}

function between(at: { low: number; high: number; above: number; below: number }): number {
  const x = at.low + ((at.high - at.low) * at.above) / (at.above - at.below);
  return Number.isFinite(x) && x > at.low && x < at.high ? x : (at.low + at.high) / 2;
}

function firstNothing(of: (x: number) => number, ends: { low: number; high: number }): number {
  let { low, high } = ends;
  for (let n = 0; n < HALVINGS; n++) {
    const middle = (low + high) / 2;
    if (of(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
const HALVINGS = 40;
