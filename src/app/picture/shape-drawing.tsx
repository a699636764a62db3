import type { Casing, Drawing, Frame, Label, Screw, SymbolAt } from './drawing.ts';
import { LINE_HEIGHT, SCREW } from './drawing.ts';
import type { Point } from './geometry.ts';

/** A place: its frame; a second line inside it once it is proved dead. */
export function FrameDrawing({ frame }: { frame: Frame }) {
  const { x, y, width, height } = frame.rect;
  return (
    <g fill="none" stroke="var(--ink)" data-frame={frame.sheet} data-proved={frame.proved}>
      <rect
        x={x}
        y={y}
        width={width}
        height={height}
        fill="var(--paper)"
        strokeWidth={frame.large ? 'var(--frame)' : 'var(--wire)'}
      />
      {frame.proved && (
        <rect x={x + 4.5} y={y + 4.5} width={width - 9} height={height - 9} strokeWidth="var(--wire-inner)" />
      )}
    </g>
  );
}

export function CasingDrawing({ casing: { left, right, cap, bottom } }: { casing: Casing }) {
  return (
    <g fill="none" stroke="var(--ink)">
      <path d={`M${left} ${cap}V${bottom}M${right} ${cap}V${bottom}`} strokeWidth="var(--frame)" />
      <path d={`M${left - 5} ${cap}H${right + 5}`} strokeWidth="6" />
    </g>
  );
}

export function SymbolDrawing({ symbol: { id, at, turn, shape, charged } }: { symbol: SymbolAt }) {
  return (
    <g
      data-symbol={id}
      transform={`translate(${at[0]} ${at[1]})${turn === 0 ? '' : ' rotate(90)'}`}
      fill="none"
      stroke="var(--ink)"
      strokeWidth="var(--wire)"
      color="var(--ink)"
    >
      {shape.shape}
      {charged && (
        <path d="M-9-11.5H-1M-9 11.5H-1M1-11.5H9M1 11.5H9M-9-7H-3M3-7H9M-9 7H-3M3 7H9" strokeWidth="1.3" />
      )}
    </g>
  );
}

export function ScrewDrawing({
  screw: {
    id,
    at: [x, y],
    kind,
  },
}: {
  screw: Screw;
}) {
  if (kind === 'point') return <circle data-screw={id} cx={x} cy={y} r="2.6" fill="var(--ink)" />;
  return (
    <g data-screw={id} fill="var(--paper)" stroke="var(--ink)" strokeWidth="var(--wire)">
      <circle cx={x} cy={y} r={SCREW} />
      {kind === 'screw' && <path d={`M${x - 3.6} ${y + 3.6}L${x + 3.6} ${y - 3.6}`} />}
    </g>
  );
}

export function GroundDrawing({ ground: { from, to } }: { ground: Drawing['grounds'][number] }) {
  const [x, y] = to;
  return (
    <path
      d={`M${from[0]} ${from[1]}V${y}M${x - 8} ${y}H${x + 8}M${x - 5} ${y + 4}H${x + 5}M${x - 2} ${y + 8}H${x + 2}`}
      fill="none"
      stroke="var(--ink)"
      strokeWidth="var(--wire-inner)"
    />
  );
}

export function PadlockDrawing({ at: [x, y] }: { at: Point }) {
  return (
    <g transform={`translate(${x} ${y})`}>
      <path d="M-4.5-1V-5A4.5 4.5 0 0 1 4.5-5V-1" fill="none" stroke="var(--ink)" strokeWidth="2.4" />
      <path d="M-8-2H8V9H-8Z" fill="var(--ink)" />
      <path d="M0 1.5V5.5" stroke="var(--paper)" strokeWidth="2.4" />
    </g>
  );
}

export function TieDrawing({ tie: { from, to } }: { tie: Drawing['ties'][number] }) {
  return (
    <path
      d={`M${from[0]} ${from[1]}L${to[0]} ${to[1]}`}
      stroke="var(--ink)"
      strokeWidth="1.6"
      strokeDasharray="3 2.5"
      fill="none"
    />
  );
}

/** Words; those of a state stand in a tag. */
export function LabelDrawing({ label: { id, kind, lines, at, rect } }: { label: Label }) {
  const isTag = kind === 'live' || kind === 'tag';
  return (
    <g data-label={id} className={`picture-${kind}`}>
      {isTag && <rect x={rect.x} y={rect.y} width={rect.width} height={rect.height} />}
      {lines.map((line, index) => (
        <text key={line} x={at[0]} y={at[1] + index * LINE_HEIGHT}>
          {line}
        </text>
      ))}
    </g>
  );
}
