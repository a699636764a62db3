import { useId } from 'react';
import { type ChainLink, type ScaleView, ticksOf } from './scale.ts';

const ink = { stroke: 'var(--ink)', strokeWidth: 'var(--line)' } as const;

/** The scale with its ticks, the window hatched between two bars. */
export function ScaleDrawing({ scale }: { scale: ScaleView }) {
  const hatch = useId();
  return (
    <svg className="window-drawing" aria-hidden="true" width="100%" height="38">
      <defs>
        <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V7" stroke="var(--ink)" strokeWidth="1.6" />
        </pattern>
      </defs>
      <rect
        x={`${scale.from}%`}
        y="2"
        width={`${scale.to - scale.from}%`}
        height="30"
        fill={`url(#${hatch})`}
      />
      <line x1="0" x2="100%" y1="32" y2="32" {...ink} />
      {scale.cut && <path d="M8 38L12 26M13 38L17 26" {...ink} />}
      {ticksOf(scale).map(({ at, long }) => (
        <line
          key={at}
          x1={`${at}%`}
          x2={`${at}%`}
          y1={long ? 25 : 28.5}
          y2="32"
          stroke="var(--ink)"
          strokeWidth="1.2"
        />
      ))}
      {scale.hasLow && <EndBar at={scale.from} />}
      {scale.hasHigh && <EndBar at={scale.to} />}
    </svg>
  );
}

function EndBar({ at }: { at: number }) {
  return <line x1={`${at}%`} x2={`${at}%`} y1="0" y2="37" stroke="var(--ink)" strokeWidth="3.4" />;
}

/** The parts of the window end to end, a slanted stroke at every joint. */
export function ChainDrawing({ chain }: { chain: readonly ChainLink[] }) {
  const spans = chain.flatMap(({ span }) => span ?? []);
  const last = spans.at(-1);
  if (last === undefined) return null;
  return (
    <svg className="window-chain-drawing" aria-hidden="true" width="100%" height="14">
      <line x1="0" x2={`${last.to}%`} y1="7" y2="7" {...ink} />
      {[0, ...spans.map(({ to }) => to)].map((at) => (
        <svg key={at} x={`${at}%`} overflow="visible" aria-hidden="true">
          <path d="M-4 13L4 1" {...ink} strokeWidth="2.4" />
        </svg>
      ))}
    </svg>
  );
}
