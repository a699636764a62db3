/**
 * How long were the eyes off this case? The work site is a claim about now: after five minutes away,
 * and whenever the page was opened afresh, it has to be said again.
 *
 * Time is compared, never waited for: a phone in a pocket runs no timers.
 */
export interface Presence {
  /** Called while the case is on screen and when it leaves it. */
  seen(caseId: string): void;
  /** True when this page has not shown the case within the last five minutes. */
  wasAway(caseId: string): boolean;
}

const AWAY_MILLISECONDS = 5 * 60_000;

/** @param now milliseconds of a clock that also runs while the device sleeps */
export function trackPresence(now: () => number): Presence {
  const lastSeen = new Map<string, number>();
  return {
    seen: (caseId) => {
      lastSeen.set(caseId, now());
    },
    wasAway: (caseId) => {
      const last = lastSeen.get(caseId);
      return last === undefined || now() - last >= AWAY_MILLISECONDS;
    },
  };
}
