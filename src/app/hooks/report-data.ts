import type { CallView } from '../../../machines/call/types.ts';
import type { EvidenceLine, ExpectedWindow, Verdict } from '../../diagnosis/types.ts';
import type { Reading } from '../../schema/case.ts';
import type { CaseState, StandingAnswer } from '../../schema/case-state.ts';

/** One row of the report: a reading, what it was judged, and the window with its parts. */
export interface ReportRow {
  readonly check: string;
  readonly reading: Reading;
  readonly outcome: string;
  readonly window: ExpectedWindow | undefined;
  /** Readings that this one corrected, oldest first. */
  readonly before: readonly Reading[];
}

/** The verdict where the call has one; a call under way reports its readings only. */
export function reportVerdict(view: CallView | undefined): Verdict | undefined {
  const next = view?.next;
  return next !== undefined && 'verdict' in next ? next.verdict : undefined;
}

/** As found: the readings that prove the verdict, then the others, in the order taken. */
export function asFoundRows(
  state: CaseState,
  view: CallView | undefined,
  verdict: Verdict | undefined,
): { proving: ReportRow[]; others: ReportRow[] } {
  const evidence = verdict?.evidence ?? [];
  const proving = evidence.map((line) => fromEvidence(state, line));
  const named = new Set(evidence.map((line) => line.check));
  const others = state.answers.filter((one) => !named.has(one.check) && !('notTaken' in one.reading));
  return { proving, others: others.map((one) => fromAnswer(state, view, one)) };
}

/** As left: the baseline of the next visit. */
export function asLeftRows(state: CaseState, view: CallView | undefined): ReportRow[] {
  const next = view?.next;
  const done = next?.kind === 'proof' ? next.done : [];
  return state.asLeft.map((one) => ({
    ...fromAnswer(state, view, one),
    outcome: done.find((judged) => judged.check === one.check)?.outcome ?? '',
  }));
}

function fromEvidence(state: CaseState, line: EvidenceLine): ReportRow {
  const answer = state.answers.find((one) => one.check === line.check);
  const { check, reading, outcome, window } = line;
  return { check, reading, outcome, window, before: answer === undefined ? [] : corrected(state, answer) };
}

function fromAnswer(state: CaseState, view: CallView | undefined, answer: StandingAnswer): ReportRow {
  const judged = view?.judged.find((one) => one.check === answer.check);
  return {
    check: answer.check,
    reading: answer.reading,
    outcome: judged?.outcome ?? '',
    window: view?.windows[answer.check],
    before: corrected(state, answer),
  };
}

function corrected(state: CaseState, answer: StandingAnswer): Reading[] {
  return answer.corrects.flatMap((id) => state.trail.find((line) => line.event === id)?.reading ?? []);
}
