import type { ReactNode } from 'react';

interface SignProps {
  /** An outcome, or `unsafe`, `contradiction`; an answer of a category gets the plain ring. */
  readonly outcome: string;
  /** Edge in pixels. */
  readonly size?: number;
}

const line = { fill: 'none', stroke: 'currentColor', strokeWidth: 2.2 } as const;
const thin = { ...line, strokeWidth: 1.5 } as const;

/** Drawn on a field of 24 × 24. The shape says it, the hatch says it again; no colour does. */
const SIGNS: Readonly<Record<string, ReactNode>> = {
  'as-expected': (
    <>
      <path d="M3 4V20M21 4V20" {...line} strokeWidth={2.8} />
      <circle cx="12" cy="12" r="4.6" fill="currentColor" />
    </>
  ),
  high: (
    <>
      <path d="M12 3L20.5 17H3.5Z" {...line} />
      <path d="M9 9.5V16.5M12 6.5V16.5M15 9.5V16.5" {...thin} />
      <path d="M2.5 21H21.5" {...line} strokeWidth={2.8} />
    </>
  ),
  low: (
    <>
      <path d="M2.5 3H21.5" {...line} strokeWidth={2.8} />
      <path d="M12 21L3.5 7H20.5Z" {...line} />
      <path d="M6 10.3H18M8 13.6H16M10.2 16.9H13.8" {...thin} />
    </>
  ),
  none: (
    <>
      <path d="M3 8V20H21V8" {...line} />
      <path d="M12 3V12M8.5 9L12 12.5L15.5 9" {...thin} />
    </>
  ),
  open: (
    <>
      <path d="M1 16H6M18 16H23" {...line} />
      <circle cx="7" cy="16" r="2.6" fill="currentColor" />
      <circle cx="17" cy="16" r="2.6" fill="currentColor" />
      <path d="M7 16L17 7" {...line} />
    </>
  ),
  unstable: <path d="M2 13L6 13L8.5 4L12 20L15.5 4L18 16L22 11" {...line} strokeLinejoin="miter" />,
  'not-taken': <path d="M4 4H20V20H4Z" {...line} strokeDasharray="4 4" strokeDashoffset="2" />,
  unsafe: (
    <>
      <path d="M8 2H16L22 8V16L16 22H8L2 16V8Z" {...line} />
      <path d="M7 12H17" {...line} strokeWidth={3} />
    </>
  ),
  contradiction: <path d="M5 5L19 19M19 5L5 19" {...line} strokeWidth={3} />,
  'ruled-out': (
    <>
      <path d="M4 4H20V20H4Z" {...line} />
      <path d="M2 22L22 2" {...line} />
    </>
  ),
  leading: <path d="M3 3H21V21H3Z" fill="var(--accent)" />,
  standing: <path d="M4 4H20V20H4Z" {...line} />,
};
const ANSWER = <circle cx="12" cy="12" r="7" {...line} />;

/** A word always stands beside it, so the sign itself is not read out. */
export function OutcomeSign({ outcome, size = 24 }: SignProps) {
  return (
    <svg
      className="sign"
      data-outcome={outcome}
      aria-hidden="true"
      width={size}
      height={size}
      viewBox="0 0 24 24"
    >
      {SIGNS[outcome] ?? ANSWER}
    </svg>
  );
}
