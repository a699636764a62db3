import { coreOf, type Lead } from '../parts/lead-chip.tsx';

/** A conductor along points: yellow plain, black solid, red with light ticks, all with an ink edge. */
export function LeadLine({ lead, points, width }: { lead: Lead; points: string; width: number }) {
  return (
    <g fill="none">
      <polyline points={points} stroke="var(--ink)" strokeWidth={width + 2.4} />
      <polyline points={points} stroke={coreOf(lead)} strokeWidth={width} />
      {lead === 'red' && <polyline points={points} stroke="var(--paper)" strokeWidth={width} strokeDasharray="2 9" />}
    </g>
  );
}
