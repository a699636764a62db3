import { setUp } from '../../plant/plant.ts';
import type { Margins, Plant } from '../../plant/types.ts';
import { figure } from '../judgements.ts';
import type { Knowledge } from '../knowledge.ts';
import type { System } from '../system.ts';
import type { MeterClass } from '../windows/meter.ts';
import { type Channel, channelOf } from './channel.ts';
import { type Hypothesis, hypothesesOf } from './hypotheses.ts';
import {
  type Marched,
  type MarginSlopes,
  type ModeShare,
  marginSlopes,
  type Piece,
  piecesOf,
} from './piece.ts';
import { twinsOf } from './twins.ts';

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
  const smallestShare = figure(knowledge.judgements, 'smallest-mode-share');
  const shares = modeShares();
  const slopes = new Map<number, MarginSlopes>();
  const pieces: Piece[] = [];
  const owner: number[] = [];
  hypotheses.forEach((hypothesis, index) => {
    const asked = {
      smallestShare,
      slopes: () => remembered(slopes, hypothesis.choice, () => marginSlopes(plants[hypothesis.choice]!)),
      modes: (electrical: string, march: Marched) => shares(hypothesis.choice, electrical, march),
    };
    for (const piece of piecesOf(hypothesis, plants[hypothesis.choice]!, asked)) {
      pieces.push(piece);
      owner.push(index);
    }
  });
  const channels = new Map<string, Channel>();
  const twins = twinsOf(pieces);
  const channel = (index: number, check: string): Channel => {
    const record = knowledge.checks[check];
    if (record === undefined) throw new Error(`belief: no check ${check}; the fold must drop unknown checks`);
    const key = `${twins.nameFor(index, record)} ${check}`;
    return remembered(channels, key, () => {
      const base = twins.baseFor(index, record);
      return channelOf(knowledge, record, {
        piece: pieces[index]!,
        meter,
        base: base === undefined ? undefined : channel(base, check),
      });
    });
  };
  const misreading = figure(knowledge.judgements, 'misreading');
  return { knowledge, system, meter, plants, hypotheses, pieces, owner, misreading, channel };
}

function remembered<K, T>(known: Map<K, T>, key: K, make: () => T): T {
  const kept = known.get(key);
  if (kept !== undefined) return kept;
  const made = make();
  known.set(key, made);
  return made;
}

/** Margins that differ by less give the same modes: the spread of a margin is about a half. */
const SAME_MARGIN = 0.02;

/**
 * Modes of each electrical fault on each choice, worked out once. A fault that leaves the margins of
 * another as they are (a leak, an open ground) has its modes.
 */
function modeShares() {
  const known = new Map<string, readonly ModeShare[]>();
  const marched = new Map<number, { margins: Margins; modes: readonly ModeShare[] }[]>();
  return (choice: number, electrical: string, march: Marched): readonly ModeShare[] =>
    remembered(known, `${choice} ${electrical}`, () => {
      const margins = march.margins();
      const others = remembered(marched, choice, () => []);
      const alike = others.find((one) => isSame(one.margins, margins));
      if (alike !== undefined) return alike.modes;
      const modes = march.modes(margins);
      others.push({ margins, modes });
      return modes;
    });
}

const isSame = (one: Margins, other: Margins): boolean =>
  isNear(one.start, other.start) && isNear(one.release, other.release);
const isNear = (one: number, other: number): boolean => one === other || Math.abs(one - other) < SAME_MARGIN;
