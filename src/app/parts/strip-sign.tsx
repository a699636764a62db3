import type { ReactNode } from 'react';

export type StripWord = 'live' | 'locked' | 'not-bled' | 'proved';

const line = { fill: 'none', stroke: 'currentColor', strokeWidth: 3 } as const;

const SIGNS: Readonly<Record<StripWord, ReactNode>> = {
  live: (
    <>
      <circle cx="22" cy="22" r="18.5" {...line} />
      <path d="M11 24C13 12 19.5 12 22 22S31 32 33 20" {...line} strokeWidth={3.6} />
    </>
  ),
  locked: (
    <>
      <path d="M13.5 20V14A8.5 8.5 0 0 1 30.5 14V20" {...line} strokeWidth={4} />
      <path d="M8 20H36V40H8Z" fill="currentColor" />
      <path d="M22 26V34" stroke="var(--paper)" strokeWidth={4} fill="none" />
    </>
  ),
  'not-bled': (
    <>
      <circle cx="22" cy="22" r="18.5" {...line} />
      <path d="M6 22H18.5M25.5 22H38" {...line} />
      <path d="M18.5 13V31M25.5 13V31" {...line} strokeWidth={3.6} />
    </>
  ),
  proved: (
    <>
      <circle cx="22" cy="22" r="18.5" {...line} />
      <path d="M3.5 22H40.5" {...line} />
    </>
  ),
};

export function StripSign({ word }: { word: StripWord }) {
  return (
    <svg className="strip-sign" aria-hidden="true" width="44" height="44" viewBox="0 0 44 44">
      {SIGNS[word]}
    </svg>
  );
}

/** Lower edge of the strip: teeth, broad upright bars, slanted bars, or a double rule. */
export function StripEdge({ word }: { word: StripWord }) {
  const pattern = `strip-edge-${word}`;
  return (
    <svg className="strip-edge" aria-hidden="true" width="100%" height="8">
      <defs>
        <pattern id="strip-edge-live" width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 0H5V8H0Z" fill="currentColor" />
        </pattern>
        <pattern id="strip-edge-locked" width="28" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 0H16V8H0Z" fill="currentColor" />
        </pattern>
        <pattern id="strip-edge-not-bled" width="16" height="8" patternUnits="userSpaceOnUse">
          <path d="M-8 8L0 0H8L0 8ZM8 8L16 0H24L16 8Z" fill="currentColor" />
        </pattern>
        <pattern id="strip-edge-proved" width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 0H8V2.5H0ZM0 5.5H8V8H0Z" fill="currentColor" />
        </pattern>
      </defs>
      <rect width="100%" height="8" fill={`url(#${pattern})`} />
    </svg>
  );
}
