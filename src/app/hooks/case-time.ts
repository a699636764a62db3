import type { CaseState } from '../../schema/case-state.ts';

/** How many readings were taken, and how many minutes lie between the first and the last event. */
export function soFar(state: CaseState): { readings: number; minutes: number } {
  const times = state.trail
    .flatMap(({ at }) => (at === undefined ? [] : [Date.parse(at)]))
    .filter(Number.isFinite);
  const span = times.length === 0 ? 0 : Math.max(...times) - Math.min(...times);
  return { readings: state.answers.length, minutes: Math.round(span / 60_000) };
}
