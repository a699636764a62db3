import type { CaseState, StandingAnswer } from '../../src/schema/case-state.ts';

/**
 * What do repairs that did not help teach? The faults that they mend are hardly to blame any more, and
 * what was read as left has become what is found: a newer reading of a check stands for the older one.
 */
export interface AfterRepairs {
  /** Repair actions that were made and found useless. */
  readonly actions: readonly string[];
  readonly answers: readonly StandingAnswer[];
}

export function afterRepairs(state: CaseState): AfterRepairs {
  const { visitEvents, asLeft, answers } = state;
  const useless = visitEvents.findLastIndex(({ type }) => type === 'repair-did-not-help');
  const [event] = visitEvents.slice(useless, useless + 1);
  if (useless < 0 || event === undefined) return { actions: [], answers };
  const actions = visitEvents
    .slice(0, useless)
    .flatMap(({ type, note }) => (type === 'repaired' && note !== undefined ? [note] : []));
  const place = new Map(state.trail.map((line, index) => [line.event, index]));
  const last = place.get(event.event) ?? state.trail.length;
  const since = asLeft.filter((one) => (place.get(one.event) ?? 0) < last);
  const kept = answers.filter(({ check }) => !since.some((one) => one.check === check));
  return { actions: [...new Set(actions)], answers: [...kept, ...since] };
}
