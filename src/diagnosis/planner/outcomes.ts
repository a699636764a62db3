import type { Column, LivePieces, NumberRow } from './live.ts';

/**
 * The outcomes that a check, or a set of them, may have, and what each would leave of belief.
 *
 * Every live piece proposes its own reading three times: at its centre and √3 deviations to either
 * side, with weights 2/3, 1/6, 1/6, which match a normal to its fifth moment. A category proposes
 * its answers.
 *
 * @source method: three-point Gauss–Hermite rule (Abramowitz & Stegun, 25.4.46)
 */
export interface Outcome {
  readonly probability: number;
  /** One value on the common scale per check, `over` where the display would show over-range, or an answer. */
  readonly shown: readonly Shown[];
  /** What is left of the live pieces, summing to one. */
  readonly weights: Float64Array;
}

export type Shown = { readonly z: number } | { readonly over: true } | { readonly answer: string };

const POINTS = [
  { shift: 0, weight: 2 / 3 },
  { shift: Math.sqrt(3), weight: 1 / 6 },
  { shift: -Math.sqrt(3), weight: 1 / 6 },
] as const;

export function outcomesOf(live: LivePieces, columns: readonly Column[]): Outcome[] {
  const single = columns[0];
  if (columns.length === 1 && single?.kind === 'answers') return answerOutcomes(live, single);
  const outcomes: Outcome[] = [];
  for (let piece = 0; piece < live.index.length; piece++) {
    for (const { shift, weight } of POINTS) {
      const shown = columns.map((column) => shownBy(column, piece, shift));
      const weights = posterior(live, columns, shown);
      outcomes.push({ probability: live.weight[piece]! * weight, shown, weights });
      if (shown.every((one) => 'over' in one)) break;
    }
  }
  return scaled(outcomes);
}

/** A piece that shows over-range on every check proposes it once, with its whole weight. */
function scaled(outcomes: Outcome[]): Outcome[] {
  const sum = outcomes.reduce((total, one) => total + one.probability, 0);
  return outcomes.map((one) => ({ ...one, probability: one.probability / sum }));
}

function answerOutcomes(live: LivePieces, column: Extract<Column, { kind: 'answers' }>): Outcome[] {
  return column.answers.map((answer) => {
    const weights = Float64Array.from(
      live.weight,
      (weight, piece) => weight * (column.rows[piece]?.[answer] ?? 1 / column.answers.length),
    );
    const probability = weights.reduce((total, one) => total + one, 0);
    return {
      probability,
      shown: [{ answer }],
      weights: probability > 0 ? weights.map((one) => one / probability) : weights,
    };
  });
}

function shownBy(column: Column, piece: number, shift: number): Shown {
  if (column.kind === 'answers') {
    const row = column.rows[piece] ?? {};
    return {
      answer: Object.keys(row).reduce((best, one) => ((row[one] ?? 0) > (row[best] ?? -1) ? one : best), ''),
    };
  }
  const row = column.rows[piece];
  if (row === undefined) return { z: 0 };
  return row.over > 0.5 ? { over: true } : { z: row.centre + shift * row.deviation };
}

function posterior(live: LivePieces, columns: readonly Column[], shown: readonly Shown[]): Float64Array {
  const weights = Float64Array.from(live.weight);
  columns.forEach((column, check) => {
    const seen = shown[check]!;
    const likelihoods = live.index.map((_, piece) => likelihood(column, piece, seen));
    const neutral = average(live.weight, likelihoods);
    for (let piece = 0; piece < weights.length; piece++)
      weights[piece] = weights[piece]! * (likelihoods[piece] ?? neutral);
  });
  let sum = 0;
  for (const weight of weights) sum += weight;
  return sum > 0 ? weights.map((weight) => weight / sum) : Float64Array.from(live.weight);
}

function likelihood(column: Column, piece: number, shown: Shown): number | undefined {
  if (column.kind === 'answers') return 'answer' in shown ? column.rows[piece]?.[shown.answer] : undefined;
  const row: NumberRow | undefined = column.rows[piece];
  if (row === undefined) return undefined;
  const { misreading } = column;
  if ('over' in shown) return (1 - misreading) * row.over + 0.3 * misreading;
  if (!('z' in shown)) return undefined;
  const distance = (shown.z - row.centre) / row.deviation;
  const normal = Math.exp(-0.5 * distance * distance) / (row.deviation * Math.sqrt(2 * Math.PI));
  return (1 - misreading) * normal + misreading / 60;
}

function average(weights: Float64Array, likelihoods: readonly (number | undefined)[]): number {
  let sum = 0;
  let share = 0;
  likelihoods.forEach((one, piece) => {
    if (one === undefined) return;
    sum += weights[piece]! * one;
    share += weights[piece]!;
  });
  return share > 0 ? sum / share : 1;
}
