import { useId } from 'react';
import { barIn, placeIn, type Span, type Stretch, stands, stretchIn } from './plumb.ts';
import type { Bar, PlumbColumn } from './plumb-line.tsx';

interface CellProps {
  readonly column: PlumbColumn;
  readonly bar: Bar | undefined;
  readonly state: 'leading' | 'standing' | 'ruled-out';
}

/** One suspect against one reading: hatched window, the suspect's bar, the line through both. */
export function CellDrawing({ column, bar, state }: CellProps) {
  const { window, amount } = column;
  return (
    <svg className="plumb-drawing" aria-hidden="true" width="100%" height="100%">
      <WindowBand window={window} />
      {bar === 'open' ? (
        <OpenBar />
      ) : (
        bar !== undefined && <SpanBar window={window} span={bar} amount={amount} state={state} />
      )}
      {amount !== undefined && <Line at={placeIn(window, amount).at} />}
    </svg>
  );
}

function WindowBand({ window }: { window: Span }) {
  const hatch = useId();
  if (window.low === undefined && window.high === undefined) return null;
  const { from, to } = stretchIn(window, window);
  return (
    <>
      <defs>
        <pattern id={hatch} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V8" stroke="var(--rule)" strokeWidth="1.4" />
        </pattern>
      </defs>
      <rect x={`${from}%`} width={`${to - from}%`} y="0" height="100%" fill={`url(#${hatch})`} />
      {window.low !== undefined && window.low > 0 && <Edge at={from} />}
      {window.high !== undefined && <Edge at={to} />}
    </>
  );
}

function Edge({ at }: { at: number }) {
  return <line x1={`${at}%`} x2={`${at}%`} y1="0" y2="100%" stroke="var(--ink)" strokeWidth="2.4" />;
}

interface SpanBarProps {
  readonly window: Span;
  readonly span: Span;
  readonly amount: number | undefined;
  readonly state: CellProps['state'];
}

/** Solid where the line goes through it; hollow where it misses. */
function SpanBar({ window, span, amount }: SpanBarProps) {
  const { from, to }: Stretch = barIn(window, span);
  const isHit = amount !== undefined && stands(span, amount);
  return (
    <rect
      x={`${from}%`}
      width={`${to - from}%`}
      y="14"
      height="15"
      fill={isHit ? 'var(--ink)' : 'var(--paper)'}
      stroke="var(--ink)"
      strokeWidth="2.2"
    />
  );
}

/** A suspect that would read open has no bar: a raised arm at the right edge. */
function OpenBar() {
  return (
    <svg x="78%" y="12" overflow="visible" aria-hidden="true">
      <rect x="-4" y="-3" width="30" height="22" fill="var(--paper)" />
      <path d="M-2 14H4M16 14H22M4 14L15 5" stroke="var(--ink)" strokeWidth="2.2" fill="none" />
      <circle cx="4" cy="14" r="2.4" fill="var(--ink)" />
      <circle cx="16" cy="14" r="2.4" fill="var(--ink)" />
    </svg>
  );
}

/** Accent, parted from ink by paper on both sides. */
function Line({ at }: { at: number }) {
  return (
    <g className="plumb-line">
      <line x1={`${at}%`} x2={`${at}%`} y1="0" y2="100%" stroke="var(--paper)" strokeWidth="11" />
      <line x1={`${at}%`} x2={`${at}%`} y1="0" y2="100%" stroke="var(--accent)" strokeWidth="5" />
    </g>
  );
}

/** The bob under the last row; an arrow beside it where the reading lies beyond the column. */
export function BobDrawing({ column }: { column: PlumbColumn }) {
  if (column.amount === undefined) return null;
  const { at, beyond } = placeIn(column.window, column.amount);
  const isLeft = at < 50;
  return (
    <svg className="plumb-drawing" aria-hidden="true" width="100%" height="22">
      <svg x={`${at}%`} overflow="visible" aria-hidden="true">
        <path d="M-7.5 0H7.5V10L0 21L-7.5 10Z" fill="var(--accent)" />
        {beyond && (
          <path
            d={isLeft ? 'M16 8H30M22 2L15 8L22 14' : 'M-30 8H-16M-22 2L-15 8L-22 14'}
            stroke="var(--accent)"
            strokeWidth="3"
            fill="none"
          />
        )}
      </svg>
    </svg>
  );
}
