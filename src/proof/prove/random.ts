/**
 * Chance that repeats: the same seed draws the same numbers on every machine.
 *
 * Each call of the sweep has a seed of its own, made from what the call is, so that neither the number of
 * workers nor the order of the calls changes what is drawn.
 *
 * @source method: mulberry32 (Ettinger, 2017) for the stream; FNV-1a (Fowler, Noll & Vo) for the seeds;
 *   Box & Muller, Ann. Math. Statist. 29:610 (1958), for the normal
 */
export interface Random {
  /** Evenly in [0, 1). */
  next(): number;
  between(low: number, high: number): number;
  normal(): number;
  chance(probability: number): boolean;
  /** @throws when there is nothing to choose from */
  pick<T>(list: readonly T[]): T;
  /** Index of one of the weights, in proportion to them. */
  weighted(weights: readonly number[]): number;
}

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    between: (low, high) => low + (high - low) * next(),
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    chance: (probability) => next() < probability,
    pick: (list) => {
      const one = list[Math.floor(next() * list.length)];
      if (one === undefined) throw new Error('prove: nothing to pick from; hand in a list with members');
      return one;
    },
    weighted: (weights) => weightedIndex(weights, next()),
  };
}

function weightedIndex(weights: readonly number[], share: number): number {
  const sum = weights.reduce((total, one) => total + one, 0);
  if (!(sum > 0)) throw new Error('prove: no weight above zero to draw by; hand in weights');
  let left = share * sum;
  for (const [index, weight] of weights.entries()) {
    left -= weight;
    if (left < 0) return index;
  }
  return weights.findLastIndex((weight) => weight > 0);
}

/** A seed from words and numbers, in order. */
export function seedOf(...parts: readonly (string | number)[]): number {
  let hash = 0x811c9dc5;
  for (const character of parts.join('\u0000')) {
    hash ^= character.codePointAt(0) ?? 0;
    hash = Math.imul(hash, 0x01000193);
  }
  return hash >>> 0;
}
