import type { Person } from '../../schema/basics.ts';
import { type Belief, toldBy } from '../belief/believe.ts';
import type { Channel } from '../belief/channel.ts';
import { project } from '../belief/gaussian.ts';
import { below } from '../belief/normal.ts';
import { toScale } from '../belief/scale.ts';
import { figure } from '../judgements.ts';

/**
 * The pieces that still matter, and what each would show for one check, laid out for quick sums.
 * Pieces that together hold less than the share left out do not change which check is best.
 */
export interface LivePieces {
  /** Indices into the model's pieces, heaviest first. */
  readonly index: readonly number[];
  /** Their weights, scaled to one. */
  readonly weight: Float64Array;
  /** Number of the repair action of each. */
  readonly action: Int32Array;
  readonly actions: readonly string[];
  /** Who will answer: a caller's word moves belief less than a technician's. */
  readonly by: Person;
}

export function livePieces(belief: Belief, by: Person): LivePieces {
  const { judgements } = belief.model.knowledge;
  const keep = { share: figure(judgements, 'live-share'), most: figure(judgements, 'live-pieces-most') };
  const { model, weights } = belief;
  const order = Array.from(weights.keys()).sort((a, b) => weights[b]! - weights[a]! || a - b);
  const index: number[] = [];
  let sum = 0;
  for (const piece of order) {
    if (sum >= keep.share || index.length >= keep.most) break;
    index.push(piece);
    sum += weights[piece]!;
  }
  const actions = [...new Set(index.map((piece) => model.hypotheses[model.owner[piece]!]!.action))];
  return {
    index,
    weight: Float64Array.from(index, (piece) => weights[piece]! / sum),
    action: Int32Array.from(index, (piece) => actions.indexOf(model.hypotheses[model.owner[piece]!]!.action)),
    actions,
    by,
  };
}

/** One check as the live pieces see it. `undefined` marks a piece that predicts nothing. */
export type Column =
  | {
      readonly kind: 'number';
      readonly rows: readonly (NumberRow | undefined)[];
      readonly misreading: number;
    }
  | {
      readonly kind: 'answers';
      readonly answers: readonly string[];
      readonly rows: readonly (Readonly<Record<string, number>> | undefined)[];
    };

export interface NumberRow {
  readonly centre: number;
  readonly deviation: number;
  /** Probability of over-range. */
  readonly over: number;
}

/** @returns undefined where no live piece predicts the check: it can teach nothing */
export function columnOf(belief: Belief, live: LivePieces, check: string): Column | undefined {
  const channels = live.index.map((piece) => belief.model.channel(piece, check));
  const first = channels.find((channel) => channel.kind !== 'silent');
  if (first === undefined) return undefined;
  if (first.kind === 'answers') {
    return {
      kind: 'answers',
      answers: Object.keys(first.probability),
      rows: channels.map((channel) =>
        channel.kind === 'answers'
          ? toldBy(belief.model, { check, by: live.by }, channel.probability)
          : undefined,
      ),
    };
  }
  return {
    kind: 'number',
    rows: channels.map((channel, row) => numberRow(belief, channel, live.index[row]!)),
    misreading: belief.model.misreading,
  };
}

function numberRow(belief: Belief, channel: Channel, piece: number): NumberRow | undefined {
  if (channel.kind !== 'number') return undefined;
  const { centre, variance } = project(belief.gaussians[piece]!, channel.line);
  const deviation = Math.sqrt(variance);
  const over =
    channel.top === undefined ? 0 : below((centre - toScale(channel.top, channel.scale)) / deviation);
  return { centre, deviation, over };
}
