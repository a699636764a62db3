/**
 * How long were the eyes off this case? The work site is a claim about now: after some minutes
 * away, and whenever the page was opened afresh, it has to be said again.
 *
 * Time is compared, never waited for: a phone in a pocket runs no timers.
 */
export interface Presence {
  /** Called while the case is on screen and when it leaves it. */
  seen(caseId: string): void;
  /** True when this page has not shown the case within the last so many minutes. */
  wasAway(caseId: string, minutes: number): boolean;
}

/** @param now milliseconds of a clock that also runs while the device sleeps */
export function trackPresence(now: () => number): Presence {
  const lastSeen = new Map<string, number>();
  return {
    seen: (caseId) => {
      lastSeen.set(caseId, now());
    },
    wasAway: (caseId, minutes) => {
      const last = lastSeen.get(caseId);
      return last === undefined || now() - last >= minutes * 60_000;
    },
  };
}
