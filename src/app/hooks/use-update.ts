import { registerSW } from 'virtual:pwa-register';
import { useEffect, useState } from 'react';

/**
 * Registers the service worker, and says when a newer version of the app is ready.
 *
 * @returns a way to change over, or undefined while there is nothing newer; the caller offers it only
 *   where no case is open, so that a call ends on the version that it began with
 */
export function useUpdate(): (() => void) | undefined {
  const [update, setUpdate] = useState<() => void>();
  useEffect(() => {
    const change = registerSW({
      immediate: true,
      onNeedRefresh: () => setUpdate(() => () => void change(true)),
    });
  }, []);
  return update;
}
