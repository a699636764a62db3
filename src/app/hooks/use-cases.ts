import { useCallback, useEffect, useState } from 'react';
import type { CaseSummary } from '../../records/summary.ts';
import { useServices } from './services.tsx';

/** The cases kept on this device, and whether the browser keeps them at all. */
export function useCases(): {
  cases: readonly CaseSummary[] | undefined;
  volatile: boolean;
  refresh(): void;
} {
  const { store } = useServices();
  const [cases, setCases] = useState<readonly CaseSummary[]>();
  const refresh = useCallback(() => {
    void store.list().then(setCases);
  }, [store]);
  useEffect(refresh, [refresh]);
  return { cases, volatile: store.volatile, refresh };
}
