import type { CaseState } from '../schema/case-state.ts';
import { LAPSED } from './fold.ts';
import type { EventDraft } from './recorded.ts';

/**
 * When is a claim about the work site no longer to be trusted?
 *
 * The site is a claim about now. Somebody who was away, another pair of hands, or a case from
 * another device makes it history: supply counts as live and nothing as proved until it is said
 * again. How many minutes away is judgement and is handed in.
 */
export type LapseReason = 'time' | 'hand-over' | 'import' | 'person' | 'withdrawn';

export interface Moment {
  readonly reason: LapseReason;
  /** Time of the last event, as it is stored; without one nobody knows how long it is. */
  readonly lastEventAt: string | undefined;
  readonly now: Date;
  readonly lapseMinutes: number;
}

/** A clock that ran backwards or cannot be read counts as too long. */
export function mustLapse({ reason, lastEventAt, now, lapseMinutes }: Moment): boolean {
  if (reason !== 'time') return true;
  const away = now.getTime() - Date.parse(lastEventAt ?? '');
  return !(away >= 0 && away < lapseMinutes * 60_000);
}

/** The event to append now, or nothing when no claim stands that could lapse. */
export function lapseDue(state: CaseState, moment: Moment): EventDraft | undefined {
  const last = state.siteEvents.at(-1);
  if (last === undefined || last.said.type === LAPSED || !mustLapse(moment)) return undefined;
  return lapse();
}

export const lapse = (): EventDraft => ({ kind: 'site', event: { type: LAPSED } });
