import { setUp } from '../../plant/plant.ts';
import type { Plant } from '../../plant/types.ts';
import { figure } from '../judgements.ts';
import type { Knowledge } from '../knowledge.ts';
import type { System } from '../system.ts';
import type { MeterClass } from '../windows/meter.ts';
import { type Channel, channelOf } from './channel.ts';
import { type Hypothesis, hypothesesOf } from './hypotheses.ts';
import { type Piece, piecesOf } from './piece.ts';

/**
 * All that belief knows of one installation before any reading: its pieces, and what each of them
 * says each check will read. Predictions are worked out when first asked for and kept, so a case
 * folded again after every tap costs no plant.
 */
export interface BeliefModel {
  readonly knowledge: Knowledge;
  readonly system: System;
  readonly meter: MeterClass;
  readonly plants: readonly Plant[];
  readonly hypotheses: readonly Hypothesis[];
  readonly pieces: readonly Piece[];
  /** Index into `hypotheses` of each piece. */
  readonly owner: readonly number[];
  /** Misreading share: readings that are nonsense whatever the plant. */
  readonly misreading: number;
  channel(piece: number, check: string): Channel;
}

export function buildModel(knowledge: Knowledge, system: System, meter: MeterClass): BeliefModel {
  const plants = system.choices.map((choice) => setUp(choice.input, choice.spreads));
  const hypotheses = hypothesesOf(knowledge, system);
  const smallest = figure(knowledge.judgements, 'smallest-mode-share');
  const pieces: Piece[] = [];
  const owner: number[] = [];
  hypotheses.forEach((hypothesis, index) => {
    for (const piece of piecesOf(hypothesis, plants[hypothesis.choice]!, smallest)) {
      pieces.push(piece);
      owner.push(index);
    }
  });
  const channels = new Map<string, Channel>();
  const channel = (index: number, check: string): Channel => {
    const key = `${index} ${check}`;
    const known = channels.get(key);
    if (known !== undefined) return known;
    const record = knowledge.checks[check];
    if (record === undefined) throw new Error(`belief: no check ${check}; the fold must drop unknown checks`);
    const built = channelOf(knowledge, record, { piece: pieces[index]!, meter });
    channels.set(key, built);
    return built;
  };
  const misreading = figure(knowledge.judgements, 'misreading');
  return { knowledge, system, meter, plants, hypotheses, pieces, owner, misreading, channel };
}
