import { useCallback, useEffect, useSyncExternalStore } from 'react';
import { hashOf, type Route, routeOf } from './route.ts';

function listen(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

/** The present place, and a way to go to another. */
export function useRoute(): { route: Route; go: (route: Route) => void } {
  const hash = useSyncExternalStore(listen, () => window.location.hash);
  const go = useCallback((route: Route) => {
    window.location.hash = hashOf(route);
  }, []);
  return { route: routeOf(hash), go };
}

/** A new screen starts at its top, with its heading read out and the keyboard on it. */
export function useFreshScreen(key: string): void {
  useEffect(() => {
    if (key === '') return;
    window.scrollTo(0, 0);
    const heading = document.querySelector<HTMLElement>('main h1');
    heading?.focus({ preventScroll: true });
  }, [key]);
}
