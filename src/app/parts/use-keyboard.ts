import { useEffect, useRef } from 'react';

interface Listeners {
  onKey(key: string): void;
  onPaste(text: string): void;
}

const TYPES_ITSELF = 'input, textarea, select, [contenteditable="true"], [role="dialog"]';

/**
 * The keyboard of the whole page, for a pad that has no field to focus.
 *
 * Leaves alone what is typed into a field, shortcuts of the browser, and Enter on a focused key,
 * which already has a meaning of its own.
 */
export function useKeyboard(listeners: Listeners): void {
  const latest = useRef(listeners);
  useEffect(() => {
    latest.current = listeners;
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented || isElsewhere(event))
        return;
      if (
        event.key === 'Enter' &&
        event.target instanceof Element &&
        event.target.closest('button, a') !== null
      )
        return;
      latest.current.onKey(event.key);
    };
    const onPaste = (event: ClipboardEvent): void => {
      if (!isElsewhere(event)) latest.current.onPaste(event.clipboardData?.getData('text') ?? '');
    };
    window.addEventListener('keydown', onKeyDown);
    window.addEventListener('paste', onPaste);
    return () => {
      window.removeEventListener('keydown', onKeyDown);
      window.removeEventListener('paste', onPaste);
    };
  }, []);
}

function isElsewhere(event: Event): boolean {
  return event.target instanceof Element && event.target.closest(TYPES_ITSELF) !== null;
}
