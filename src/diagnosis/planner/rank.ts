import type { Person } from '../../schema/basics.ts';
import type { Belief } from '../belief/believe.ts';
import { byId, entropy } from '../belief/summary.ts';
import { figure } from '../judgements.ts';
import { type Column, columnOf, type LivePieces, livePieces } from './live.ts';
import { outcomesOf } from './outcomes.ts';

/**
 * Which of the proposed checks tells most per minute of the technician's time?
 *
 * Told is the expected drop in entropy over repair actions: two faults with the same repair need not
 * be told apart. One step of look-ahead; the sweep compares it with exact search.
 *
 * @source method: value of information per cost (Heckerman, Breese & Rommelse, Comm. ACM 38:49, 1995)
 */
export interface Proposal {
  /** One check, or the checks of a reading set. */
  readonly checks: readonly string[];
  /** Hands-on minutes, site steps included, and waiting minutes at their rate. */
  readonly minutes: number;
  readonly procedure: string | undefined;
  /** Checks that these open the way to; they share in what the proposal is worth. */
  readonly leadsTo?: readonly string[];
}

export interface RankedProposal extends Proposal {
  /** Bits of entropy over repair actions that it is expected to take away; never negative. */
  readonly gain: number;
  readonly perMinute: number;
}

/** Proposals by bits per minute, best first; ties by id. */
export function rank(belief: Belief, proposals: readonly Proposal[], by: Person): RankedProposal[] {
  const { judgements } = belief.model.knowledge;
  const { live, gains } = valuesOf(belief, by);
  const gainOf = (checks: readonly string[]): number => {
    const key = checks.join(' ');
    const known = gains.get(key) ?? expectedGain(belief, live, checks);
    gains.set(key, known);
    return known;
  };
  const least = figure(judgements, 'least-minutes');
  return proposals
    .map((proposal) => {
      const gain = Math.max(
        gainOf(proposal.checks),
        proposal.leadsTo === undefined ? 0 : gainOf(proposal.leadsTo),
      );
      return { ...proposal, gain, perMinute: gain / Math.max(least, proposal.minutes) };
    })
    .sort(
      (one, other) =>
        Math.round(other.perMinute * 1e6) - Math.round(one.perMinute * 1e6) ||
        byId(one.checks[0] ?? '', other.checks[0] ?? ''),
    );
}

interface Values {
  readonly live: LivePieces;
  /** Gain of each proposal asked so far, by its checks. */
  readonly gains: Map<string, number>;
}

/** One belief is asked about the same checks many times while the trees are gone through. */
const VALUES = new WeakMap<Belief, Map<Person, Values>>();

function valuesOf(belief: Belief, by: Person): Values {
  const known = VALUES.get(belief) ?? new Map<Person, Values>();
  VALUES.set(belief, known);
  const values = known.get(by) ?? { live: livePieces(belief, by), gains: new Map() };
  known.set(by, values);
  return values;
}

/** Expected drop in entropy over repair actions, in bits; 0 where nothing is predicted. */
export function expectedGain(belief: Belief, live: LivePieces, checks: readonly string[]): number {
  const columns = checks
    .map((check) => columnOf(belief, live, check))
    .filter((column): column is Column => column !== undefined);
  if (columns.length === 0) return 0;
  const before = entropy(byAction(live, live.weight));
  const after = outcomesOf(live, columns).reduce(
    (sum, outcome) => sum + outcome.probability * entropy(byAction(live, outcome.weights)),
    0,
  );
  return Math.max(0, before - after);
}

function byAction(live: LivePieces, weights: Float64Array): Float64Array {
  const sums = new Float64Array(live.actions.length);
  for (let piece = 0; piece < weights.length; piece++)
    sums[live.action[piece]!] = sums[live.action[piece]!]! + weights[piece]!;
  return sums;
}
