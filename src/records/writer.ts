/**
 * One writer per case: two tabs that both append would number their events alike.
 *
 * Uses the browser's own locks, which fall with the page that held them. Where there are none every
 * page may write, and the database still refuses an id that is taken.
 */
export interface Writers {
  /** True when this page may write to the case, now and until it lets go. */
  hold(caseId: string): Promise<boolean>;
  release(caseId: string): void;
}

/** The part of the browser's lock manager that is used. */
export type Locks = Pick<LockManager, 'request'>;

export function writers(locks: Locks | undefined): Writers {
  const asked = new Map<string, Promise<boolean>>();
  const letGo = new Map<string, () => void>();
  return {
    hold: (caseId) => {
      if (locks === undefined) return Promise.resolve(true);
      const known = asked.get(caseId);
      if (known !== undefined) return known;
      const answer = ask(locks, caseId, (release) => letGo.set(caseId, release));
      asked.set(caseId, answer);
      const forget = (): unknown => asked.get(caseId) === answer && asked.delete(caseId);
      answer.then((held) => held || forget(), forget);
      return answer;
    },
    release: (caseId) => {
      letGo.get(caseId)?.();
      letGo.delete(caseId);
      asked.delete(caseId);
    },
  };
}

function ask(locks: Locks, caseId: string, held: (release: () => void) => void): Promise<boolean> {
  return new Promise((resolve, reject) => {
    locks
      .request(`case ${caseId}`, { ifAvailable: true }, (lock) => {
        if (lock === null) {
          resolve(false);
          return undefined;
        }
        return new Promise<void>((release) => {
          held(release);
          resolve(true);
        });
      })
      .catch(reject);
  });
}
