import { useEffect, useState } from 'react';
import { figure } from '../../diagnosis/judgements.ts';
import { LAPSED } from '../../records/fold.ts';
import { lapse } from '../../records/lapse.ts';
import type { EventDraft, RecordedEvent } from '../../records/recorded.ts';
import { useServices } from './services.tsx';

/**
 * Makes what was said about the site lapse on a fresh page and after too many minutes away.
 *
 * @returns true once the first look is done: no instruction may be asked for before
 */
export function useLapse(caseId: string, say: (event: EventDraft) => Promise<boolean>): boolean {
  const { catalog, store, presence } = useServices();
  const minutes = figure(catalog.judgements, 'lapse-minutes');
  const [lookedAt, setLookedAt] = useState<string>();
  useEffect(() => {
    let open = true;
    const look = async (): Promise<void> => {
      const away = presence.wasAway(caseId, minutes);
      presence.seen(caseId);
      if (away && hasClaims((await store.read(caseId)).events)) await say(lapse());
      if (open) setLookedAt(caseId);
    };
    const onVisibility = (): void => {
      if (document.visibilityState === 'visible') void look();
      else presence.seen(caseId);
    };
    void look();
    document.addEventListener('visibilitychange', onVisibility);
    return () => {
      open = false;
      presence.seen(caseId);
      document.removeEventListener('visibilitychange', onVisibility);
    };
  }, [store, presence, caseId, say, minutes]);
  return lookedAt === caseId;
}

/** Anything said about the site since it last lapsed? */
function hasClaims(events: readonly RecordedEvent[]): boolean {
  const last = events.findLast((event) => event.kind === 'site');
  return last !== undefined && last.event.type !== LAPSED;
}
