import type { Person } from '../../schema/basics.ts';
import type { Reading } from '../../schema/case.ts';
import { of } from '../../units/units.ts';
import { figure } from '../judgements.ts';
import type { Channel } from './channel.ts';
import { type Gaussian, observe, observeOver, project } from './gaussian.ts';
import { type Before, priorsOf } from './hypotheses.ts';
import type { BeliefModel } from './model.ts';
import { toScale } from './scale.ts';

/**
 * Belief: how likely each piece is, given every reading that stands.
 *
 * It is a fold from the priors, made anew from the answers, so that a correction, an import or
 * another order of the same readings needs no code and gives the same answer.
 */
export interface Belief {
  readonly model: BeliefModel;
  /** Probability of each piece of the model; they sum to one. */
  readonly weights: Float64Array;
  readonly gaussians: readonly Gaussian[];
  readonly trace: readonly TraceLine[];
}

/** One reading's part in the belief. */
export interface TraceLine {
  readonly check: string;
  readonly before: Float64Array;
  readonly after: Float64Array;
  /** ln of the probability that belief gave this reading. */
  readonly logEvidence: number;
  /** No live piece is within reach of the reading. */
  readonly surprising: boolean;
}

export interface Given {
  readonly check: string;
  readonly reading: Reading;
  readonly by: Person;
  /** Taken again and said again: it is no slip, whatever belief makes of it. */
  readonly confirmed?: boolean;
}

export function believe(model: BeliefModel, before: Before, answers: readonly Given[]): Belief {
  const known = remembered(model);
  let key = JSON.stringify(before);
  let belief = known.get(key) ?? prior(model, before);
  known.set(key, belief);
  for (const given of answers) {
    key += JSON.stringify(given);
    belief = known.get(key) ?? learn(belief, given);
    known.set(key, belief);
  }
  return belief;
}

/**
 * Beliefs of one model by all that led to them. A call is folded anew after every tap; what it shares
 * with the fold before is looked up, and only the new reading is learned.
 */
const MEMORY = new WeakMap<BeliefModel, Map<string, Belief>>();
const MOST_REMEMBERED = 100;

function remembered(model: BeliefModel): Map<string, Belief> {
  const known = MEMORY.get(model);
  if (known !== undefined && known.size < MOST_REMEMBERED) return known;
  const empty = new Map<string, Belief>();
  MEMORY.set(model, empty);
  return empty;
}

function prior(model: BeliefModel, before: Before): Belief {
  const priors = priorsOf(model.hypotheses, before);
  const weights = Float64Array.from(
    model.pieces,
    (piece, index) => priors[model.owner[index]!]! * piece.share,
  );
  scaleToOne(weights);
  return { model, weights, gaussians: model.pieces.map((piece) => piece.start), trace: [] };
}

/** One more reading. Readings that say nothing (not taken, unstable) leave belief as it is. */
export function learn(belief: Belief, given: Given): Belief {
  const { model } = belief;
  const results = model.pieces.map((_, index) => judgePiece(belief, index, given));
  if (results.every((one) => one === undefined)) return belief;
  const neutral = averageLikelihood(belief.weights, results);
  const weights = Float64Array.from(belief.weights, (weight, index) => {
    const result = results[index];
    return weight * (result === undefined ? neutral : Math.exp(result.logLikelihood));
  });
  const total = scaleToOne(weights);
  const limit = figure(model.knowledge.judgements, 'surprise-deviations');
  const line: TraceLine = {
    check: given.check,
    before: belief.weights,
    after: weights,
    logEvidence: Math.log(total),
    surprising: given.confirmed !== true && isSurprising(belief, results, limit),
  };
  return {
    model,
    weights,
    gaussians: belief.gaussians.map((gaussian, index) => results[index]?.gaussian ?? gaussian),
    trace: [...belief.trace, line],
  };
}

/** What a piece that cannot predict the reading is given: the likelihood of the others, so that it neither gains nor loses. */
function averageLikelihood(weights: Float64Array, results: readonly (PieceResult | undefined)[]): number {
  let sum = 0;
  let share = 0;
  results.forEach((result, index) => {
    if (result === undefined) return;
    sum += weights[index]! * Math.exp(result.logLikelihood);
    share += weights[index]!;
  });
  return share > 0 ? sum / share : 1;
}

interface PieceResult {
  readonly logLikelihood: number;
  readonly gaussian: Gaussian;
  /** Distance of the reading in standard deviations; 0 where that has no meaning. */
  readonly distance: number;
}

function judgePiece(belief: Belief, index: number, given: Given): PieceResult | undefined {
  const { model } = belief;
  const gaussian = belief.gaussians[index]!;
  const channel = model.channel(index, given.check);
  const { reading } = given;
  if ('answer' in reading && channel.kind === 'answers') {
    return { logLikelihood: Math.log(answerLikelihood(model, given, channel)), gaussian, distance: 0 };
  }
  if (channel.kind !== 'number') return undefined;
  if ('open' in reading && channel.top !== undefined) {
    const top = toScale(channel.top, channel.scale);
    return { ...observeOver(gaussian, channel.line, { top, misreading: model.misreading }), distance: 0 };
  }
  if (!('value' in reading)) return undefined;
  const z = toScale(of(...reading.value), channel.scale);
  const { centre, variance } = project(gaussian, channel.line);
  const moved = observe(gaussian, channel.line, { z, misreading: model.misreading });
  return { ...moved, distance: Math.abs(z - centre) / Math.sqrt(variance) };
}

function answerLikelihood(
  model: BeliefModel,
  given: Given,
  channel: Extract<Channel, { kind: 'answers' }>,
): number {
  const answer = 'answer' in given.reading ? given.reading.answer : '';
  const told = toldBy(model, given, channel.probability)[answer] ?? 0;
  return (1 - model.misreading) * told + model.misreading / 2;
}

/** Answers as they will be told: right as often as this person is with this instrument, else any other. */
export function toldBy(
  model: BeliefModel,
  asked: { readonly check: string; readonly by: Person },
  probability: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  const { instruments, checks } = model.knowledge;
  const reliability = instruments[checks[asked.check]?.instrument ?? '']?.reliability?.[asked.by] ?? 1;
  if (reliability === 1) return probability;
  const others = Math.max(1, Object.keys(probability).length - 1);
  return Object.fromEntries(
    Object.entries(probability).map(([answer, share]) => [
      answer,
      reliability * share + ((1 - reliability) * (1 - share)) / others,
    ]),
  );
}

/** No fault that still matters has a piece within reach of the reading. */
function isSurprising(belief: Belief, results: readonly (PieceResult | undefined)[], limit: number): boolean {
  const { model, weights } = belief;
  const least = figure(model.knowledge.judgements, 'live-weight');
  const live = new Map<string, number>();
  const faultOf = (index: number): string => model.hypotheses[model.owner[index]!]!.fault.id;
  for (const [index, weight] of weights.entries())
    live.set(faultOf(index), (live.get(faultOf(index)) ?? 0) + weight);
  return !results.some(
    (result, index) =>
      (live.get(faultOf(index)) ?? 0) > least && (result === undefined || result.distance <= limit),
  );
}

function scaleToOne(weights: Float64Array): number {
  let total = 0;
  for (const weight of weights) total += weight;
  if (!(total > 0)) throw new Error('belief: all weights vanished; the misreading share must be above zero');
  for (let index = 0; index < weights.length; index++) weights[index] = weights[index]! / total;
  return total;
}
