import type { OpenCase } from './use-case.ts';
import { useRoute } from './use-route.ts';

/** STOP: recorded at once, from every screen, and the safe state is what is shown next. */
export function useStop(open: OpenCase): () => void {
  const { go } = useRoute();
  return () => {
    void open.say({ kind: 'site', event: { type: 'stop-unsafe' } });
    go({ screen: 'step', case: open.id, about: [] });
  };
}
