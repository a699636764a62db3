import { coreOf } from '../parts/lead-chip.tsx';
import { LEAD_WIDTH, type Wire } from './drawing.ts';
import { type Point, pathText, round, segmentsOf } from './geometry.ts';
import { HOP } from './nets.ts';

const WEIGHTS = { line: 'var(--wire)', inner: 'var(--wire-inner)' } as const;

/** One conductor: a line, or a lead with its ink edge; thorned while it counts as live. */
export function WireDrawing({ wire }: { wire: Wire }) {
  const path = pathText(wire.path);
  return (
    <g fill="none" data-wire={wire.id}>
      {wire.over && <path d={path} stroke="var(--paper)" strokeWidth={wire.lead === undefined ? 7 : 11} />}
      {wire.lead === undefined ? (
        <path d={path} stroke="var(--ink)" strokeWidth={WEIGHTS[wire.weight]} />
      ) : (
        <LeadPath path={path} lead={wire.lead} />
      )}
      {wire.live && <Thorns wire={wire} />}
    </g>
  );
}

function LeadPath({ path, lead }: { path: string; lead: NonNullable<Wire['lead']> }) {
  const core = LEAD_WIDTH - 2.4;
  return (
    <>
      <path d={path} stroke="var(--ink)" strokeWidth={LEAD_WIDTH} />
      <path d={path} stroke={coreOf(lead)} strokeWidth={core} />
      {lead === 'red' && <path d={path} stroke="var(--paper)" strokeWidth={core} strokeDasharray="2.5 6" />}
      {lead === 'two' && <path d={path} stroke="var(--ink)" strokeWidth={core} strokeDasharray="2 5" />}
    </>
  );
}

const STEP = 9;
const LENGTHS = { line: 4.6, inner: 3 } as const;

/** Cross ticks: live, or not proved dead. */
function Thorns({ wire }: { wire: Wire }) {
  const length = wire.lead === undefined ? LENGTHS[wire.weight] : 5.6;
  const step = wire.weight === 'inner' && wire.lead === undefined ? STEP * 1.3 : STEP;
  return (
    <path
      className="thorns"
      d={ticksAlong(wire.path, step, length)}
      stroke="var(--ink)"
      strokeWidth={wire.weight === 'inner' ? 1.3 : 1.8}
    />
  );
}

function ticksAlong(path: readonly Point[], step: number, length: number): string {
  return segmentsOf(path)
    .flatMap(({ from, to }) => {
      const whole = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const count = Math.max(0, Math.floor(whole / step));
      const [ux, uy] = [(to[0] - from[0]) / whole, (to[1] - from[1]) / whole];
      return Array.from({ length: count }, (_, index) => {
        const along = (index + 0.5) * (whole / count);
        const [x, y] = [from[0] + ux * along, from[1] + uy * along];
        return `M${round(x - uy * length)} ${round(y + ux * length)}L${round(x + uy * length)} ${round(y - ux * length)}`;
      });
    })
    .join('');
}

/** A level wire arches over the one it does not touch. */
export function HopDrawing({ at: [x, y] }: { at: Point }) {
  return (
    <g fill="none">
      <path d={`M${x - HOP} ${y}H${x + HOP}`} stroke="var(--paper)" strokeWidth="4" />
      <path d={`M${x} ${y - HOP - 2}V${y + HOP}`} stroke="var(--ink)" strokeWidth="var(--wire-inner)" />
      <path
        d={`M${x - HOP} ${y}a${HOP} ${HOP} 0 0 1 ${2 * HOP} 0`}
        stroke="var(--ink)"
        strokeWidth="var(--wire-inner)"
      />
    </g>
  );
}
