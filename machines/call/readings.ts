import { type Belief, believe, type Given } from '../../src/diagnosis/belief/believe.ts';
import type { Before } from '../../src/diagnosis/belief/hypotheses.ts';
import type { BeliefModel } from '../../src/diagnosis/belief/model.ts';
import { figure } from '../../src/diagnosis/judgements.ts';
import type { ExpectedWindow, JudgedReading, Outcome } from '../../src/diagnosis/types.ts';
import { judge } from '../../src/diagnosis/windows/judge.ts';
import { sumTest } from '../../src/diagnosis/windows/sum-test.ts';
import type { Reading } from '../../src/schema/case.ts';
import type { CaseState } from '../../src/schema/case-state.ts';
import type { Check } from '../../src/schema/check.ts';
import { of } from '../../src/units/units.ts';
import { afterRepairs } from './after-repairs.ts';
import { windowsFor } from './models.ts';

/** Everything that was read, compared with what was expected, and what belief makes of it. */
export interface Readings {
  readonly windows: Readonly<Record<string, ExpectedWindow>>;
  /** By check, in the order read. */
  readonly judged: ReadonlyMap<string, JudgedReading>;
  readonly answers: readonly Given[];
  readonly before: Before;
  readonly belief: Belief;
  outcomeOf(check: string): Outcome | undefined;
}

export function readingsOf(model: BeliefModel, checks: readonly Check[], state: CaseState): Readings {
  const { knowledge } = model;
  const { actions, answers: found } = afterRepairs(state);
  const stillThere = figure(knowledge.judgements, 'repair-leaves-it');
  const before = { circumstances: state.circumstances, repaired: { actions, stillThere } };
  const answers = found
    .filter((one) => knowledge.checks[one.check] !== undefined)
    .map(
      ({ check, reading, by, corrects }): Given => ({
        check,
        reading,
        by,
        confirmed: corrects.length > 0,
      }),
    );
  const windows = windowsFor(model, checks, hasRun(knowledge.checks, answers));
  const noneShare = figure(knowledge.judgements, 'none-share');
  const judged = new Map<string, JudgedReading>();
  for (const { check, reading } of [...answers, ...computed(checks, answers)]) {
    const window = windows[check];
    if (window !== undefined) judged.set(check, judge(reading, window, noneShare));
  }
  return {
    windows,
    judged,
    answers,
    before,
    belief: believe(model, before, answers),
    outcomeOf: (check) => judged.get(check)?.outcome,
  };
}

/** Sum tests follow from their three readings; nobody is asked for them. */
function computed(
  checks: readonly Check[],
  answers: readonly Given[],
): { check: string; reading: Reading }[] {
  return checks.flatMap((check) => {
    if (!('sumTest' in check.predict)) return [];
    const [yellowBlack, yellowRed, blackRed] = check.predict.sumTest.map((one) => ohmsOf(answers, one));
    if (yellowBlack === undefined || yellowRed === undefined || blackRed === undefined) return [];
    const value = Math.max(0, sumTest({ yellowBlack, yellowRed, blackRed }));
    return [{ check: check.id, reading: { value: [value, 'ohm'] } }];
  });
}

function ohmsOf(answers: readonly Given[], check: string): number | undefined {
  const reading = answers.findLast((one) => one.check === check)?.reading;
  return reading !== undefined && 'value' in reading ? of(...reading.value) : undefined;
}

/** A reading of running amps says that the motor has run on this visit. */
function hasRun(checks: Readonly<Record<string, Check>>, answers: readonly Given[]): boolean {
  return answers.some(({ check, reading }) => {
    const predict = checks[check]?.predict;
    const running =
      predict !== undefined && 'reads' in predict && (predict.reads === 'amps' || predict.reads === 'watts');
    return running && 'value' in reading && reading.value[0] > 0;
  });
}
