import { useCallback, useEffect, useState } from 'react';
import { askToKeep } from '../../records/store.ts';
import type { CaseSummary } from '../../records/summary.ts';
import { useServices } from './services.tsx';

export interface Cases {
  /** Absent until they are read. */
  readonly cases: readonly CaseSummary[] | undefined;
  /** The browser stores nothing: all is gone with the page. */
  readonly volatile: boolean;
  /** The browser did not promise to keep what it stores. */
  readonly mayBeCleared: boolean;
  refresh(): void;
}

/** The cases kept on this device. With the first of them the browser is asked to keep them. */
export function useCases(): Cases {
  const { store } = useServices();
  const [cases, setCases] = useState<readonly CaseSummary[]>();
  const [mayBeCleared, setMayBeCleared] = useState(false);
  const refresh = useCallback(() => {
    void store.list().then(setCases);
  }, [store]);
  useEffect(refresh, [refresh]);
  const keepsSome = cases !== undefined && cases.length > 0;
  useEffect(() => {
    if (keepsSome)
      void askToKeep(navigator.storage).then((answer) => setMayBeCleared(answer === 'may-be-cleared'));
  }, [keepsSome]);
  return { cases, volatile: store.volatile, mayBeCleared, refresh };
}
