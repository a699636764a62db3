import type { Belief, TraceLine } from '../belief/believe.ts';
import { actionWeights, suspectWeights } from '../belief/summary.ts';
import type { EvidenceLine, ExpectedWindow, JudgedReading } from '../types.ts';

/**
 * Which readings carry a verdict, and which rivals did each of them put out of the running?
 *
 * The weight of a reading is how far it moved the log odds of the repair.
 *
 * @source method: weight of evidence (Good, Probability and the Weighing of Evidence, 1950)
 */
export function evidenceFor(
  belief: Belief,
  action: string,
  readings: { judged: ReadonlyMap<string, JudgedReading>; windows: Readonly<Record<string, ExpectedWindow>> },
): EvidenceLine[] {
  return belief.trace.flatMap((line) => {
    const judged = readings.judged.get(line.check);
    const window = readings.windows[line.check];
    if (judged === undefined || window === undefined) return [];
    return [
      {
        check: line.check,
        reading: judged.reading,
        outcome: judged.outcome,
        window,
        weight: oddsShift(belief, line, action),
        rulesOut: ruledOut(belief, line),
      },
    ];
  });
}

function oddsShift(belief: Belief, line: TraceLine, action: string): number {
  const odds = (weights: Float64Array): number => {
    const share = actionWeights(belief.model, weights).get(action) ?? 0;
    return Math.log((share + 1e-12) / (1 - share + 1e-12));
  };
  return odds(line.after) - odds(line.before);
}

const WAS_IN_THE_RUNNING = 0.005;
const IS_OUT = 0.01;
const BLOW = 0.1;

/** Suspects that were in the running before the reading and are not after it. */
function ruledOut(belief: Belief, line: TraceLine): string[] {
  const before = suspectWeights(belief.model, line.before);
  const after = suspectWeights(belief.model, line.after);
  return [...before]
    .filter(([key, was]) => {
      const is = after.get(key) ?? 0;
      return was > WAS_IN_THE_RUNNING && is < IS_OUT && is < BLOW * was;
    })
    .sort(([, one], [, other]) => other - one)
    .map(([key]) => key);
}
