import { figure } from '../judgements.ts';
import type { Suspect, Verdict } from '../types.ts';
import type { Belief } from './believe.ts';
import type { BeliefModel } from './model.ts';

/** Belief gathered the ways people ask for it: by repair, by suspect. */

/** Probability of each repair action. */
export function actionWeights(model: BeliefModel, weights: Float64Array): Map<string, number> {
  const sums = new Map<string, number>();
  model.owner.forEach((owner, index) => {
    const { action } = model.hypotheses[owner]!;
    sums.set(action, (sums.get(action) ?? 0) + weights[index]!);
  });
  return sums;
}

const suspectKey = (fault: string, variant: string): string => `${fault} ${variant}`;

/** Probability of each fault and variant, choices of the installation summed. */
export function suspectWeights(model: BeliefModel, weights: Float64Array): Map<string, number> {
  const sums = new Map<string, number>();
  model.owner.forEach((owner, index) => {
    const { fault, variant } = model.hypotheses[owner]!;
    const key = suspectKey(fault.id, variant);
    sums.set(key, (sums.get(key) ?? 0) + weights[index]!);
  });
  return sums;
}

/** What may have caused the faults of a repair, each with its share of the repair's probability. */
export function causesOf({ model, weights }: Belief, action: string): Verdict['causes'] {
  const sums = new Map<string, { fault: string; action: string; probability: number }>();
  let total = 0;
  model.owner.forEach((owner, index) => {
    const hypothesis = model.hypotheses[owner]!;
    if (hypothesis.action !== action) return;
    total += weights[index]!;
    if (hypothesis.cause === undefined) return;
    const { fault, action: repair } = hypothesis.cause;
    const before = sums.get(fault.id)?.probability ?? 0;
    sums.set(fault.id, { fault: fault.id, action: repair, probability: before + weights[index]! });
  });
  const least = figure(model.knowledge.judgements, 'least-cause');
  return [...sums.values()]
    .map((one) => ({ ...one, probability: total > 0 ? one.probability / total : 0 }))
    .filter(({ probability }) => probability >= least)
    .sort((one, other) => other.probability - one.probability || byId(one.fault, other.fault));
}

const RULED_OUT = 0.01;

/** All suspects, likeliest first; ranks compare values rounded to 1e-6, ties go by id. */
export function suspectsOf(belief: Belief): Suspect[] {
  const { model } = belief;
  const now = suspectWeights(model, belief.weights);
  const steps = belief.trace.map((line) => ({
    check: line.check,
    before: suspectWeights(model, line.before),
    after: suspectWeights(model, line.after),
  }));
  const seen = new Map<string, Suspect>();
  for (const { fault, variant, action } of model.hypotheses) {
    const key = suspectKey(fault.id, variant);
    if (seen.has(key)) continue;
    const probability = now.get(key) ?? 0;
    const suspect: Suspect = { fault: fault.id, variant, action, probability };
    const ruledOutBy = probability < RULED_OUT ? heaviestBlow(steps, key) : undefined;
    seen.set(key, ruledOutBy === undefined ? suspect : { ...suspect, ruledOutBy });
  }
  return [...seen.values()].sort(
    (one, other) =>
      rounded(other.probability) - rounded(one.probability) ||
      byId(one.fault, other.fault) ||
      byId(one.variant, other.variant),
  );
}

/** Order of ids by code unit, the same on every machine and in every language. */
export const byId = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);

const rounded = (value: number): number => Math.round(value * 1e6);

type Step = { check: string; before: Map<string, number>; after: Map<string, number> };

/** The reading that cost a suspect most of its odds, if one took at least nine tenths of them. */
function heaviestBlow(steps: readonly Step[], key: string): string | undefined {
  let worst: string | undefined;
  let least = 0.1;
  for (const { check, before, after } of steps) {
    const was = before.get(key) ?? 0;
    const ratio = was > 0 ? (after.get(key) ?? 0) / was : 1;
    if (ratio < least) {
      least = ratio;
      worst = check;
    }
  }
  return worst;
}

/** Entropy in bits of a set of weights that sum to one. */
export function entropy(weights: Iterable<number>): number {
  let bits = 0;
  for (const weight of weights) if (weight > 0) bits -= weight * Math.log2(weight);
  return bits;
}
