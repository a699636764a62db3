import type { Person } from '../../schema/basics.ts';
import type { Belief } from '../belief/believe.ts';
import { fromScale } from '../belief/scale.ts';
import { figure } from '../judgements.ts';
import type { ExpectedWindow, Outcome, OutcomePreview } from '../types.ts';
import { outcomeOfOpen, outcomeOfValue } from '../windows/judge.ts';
import { columnOf, type LivePieces, livePieces } from './live.ts';
import { outcomesOf, type Shown } from './outcomes.ts';

/**
 * What would each outcome of the next check mean? The same outcomes that ranked the check, judged
 * against its window and gathered by name, each with the suspects that would then lead.
 */
export function previewOutcomes(belief: Belief, window: ExpectedWindow, by: Person): OutcomePreview[] {
  const { judgements } = belief.model.knowledge;
  const live = livePieces(belief, by);
  const column = columnOf(belief, live, window.check);
  if (column === undefined) return [];
  const noneShare = figure(judgements, 'none-share');
  const gathered = new Map<Outcome, { probability: number; weights: Float64Array }>();
  for (const { probability, shown, weights } of outcomesOf(live, [column])) {
    const outcome = outcomeShown(belief, live, { window, shown: shown[0], noneShare });
    if (outcome === undefined) continue;
    const sum = gathered.get(outcome) ?? { probability: 0, weights: new Float64Array(live.index.length) };
    weights.forEach((weight, piece) => {
      sum.weights[piece] = sum.weights[piece]! + weight * probability;
    });
    gathered.set(outcome, { probability: sum.probability + probability, weights: sum.weights });
  }
  return [...gathered]
    .map(([outcome, sum]) => ({
      outcome,
      probability: sum.probability,
      leads: leadingFaults(belief, live, sum.weights),
    }))
    .filter((one) => one.probability > LEAST_SHOWN)
    .sort((one, other) => other.probability - one.probability);
}

const LEAST_SHOWN = 0.005;
const LEADS = 3;

/** A simulated display, judged as a real one would be. */
function outcomeShown(
  belief: Belief,
  live: LivePieces,
  at: { window: ExpectedWindow; shown: Shown | undefined; noneShare: number },
): Outcome | undefined {
  const { window, shown, noneShare } = at;
  if (shown === undefined) return undefined;
  if ('answer' in shown) return shown.answer;
  if ('over' in shown) return outcomeOfOpen(window);
  const number = firstNumber(belief, live, window.check);
  return number === undefined
    ? undefined
    : outcomeOfValue(Math.max(0, fromScale(shown.z, number.scale)), window, noneShare).outcome;
}

function firstNumber(belief: Belief, live: LivePieces, check: string) {
  for (const piece of live.index) {
    const channel = belief.model.channel(piece, check);
    if (channel.kind === 'number') return channel;
  }
  return undefined;
}

function leadingFaults(belief: Belief, live: LivePieces, weights: Float64Array): string[] {
  const { model } = belief;
  const sums = new Map<string, number>();
  let total = 0;
  weights.forEach((weight, piece) => {
    const { fault } = model.hypotheses[model.owner[live.index[piece]!]!]!;
    sums.set(fault.id, (sums.get(fault.id) ?? 0) + weight);
    total += weight;
  });
  return [...sums]
    .filter(([, weight]) => weight > 0.05 * total)
    .sort(([, one], [, other]) => other - one)
    .slice(0, LEADS)
    .map(([fault]) => fault);
}
