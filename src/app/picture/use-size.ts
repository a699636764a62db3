import { type RefObject, useEffect, useState } from 'react';
import type { Size } from './layout.ts';

/** Narrower than this the sheets would touch: then the picture scrolls sideways in its own box. */
export const NARROWEST = 290;
const USUAL = 366;
const WIDE = 560;
const PHONE_HEIGHT = 262;
/** A wide screen shows everything a quarter larger: it is looked at from further off. */
const WIDE_ZOOM = 1.25;
const TALLEST = 480;
const ROOT = 16;

export interface Fitted extends Size {
  /** How much larger than usual the person has set the type. */
  readonly zoom: number;
}

/** Size of a picture that fits this width; a wide one is taller in proportion. */
export function sizeFor(width: number, zoom = 1): Fitted {
  const larger = width / zoom >= WIDE ? zoom * WIDE_ZOOM : zoom;
  const own = Math.max(NARROWEST, Math.floor(width / larger));
  const height = larger === zoom ? PHONE_HEIGHT : Math.min(TALLEST, Math.round(own * 0.7));
  return { width: own, height, zoom: larger };
}

/** The size that the element leaves for the picture, followed as it changes. */
export function useSize(element: RefObject<HTMLElement | null>): Fitted {
  const [size, setSize] = useState<Fitted>(() => sizeFor(USUAL));
  useEffect(() => {
    const found = element.current;
    if (found === null || typeof ResizeObserver === 'undefined') return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const root = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || ROOT;
      const next = sizeFor(entry.contentRect.width, Math.max(1, root / ROOT));
      setSize((now) =>
        now.width === next.width && now.height === next.height && now.zoom === next.zoom ? now : next,
      );
    });
    observer.observe(found);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
