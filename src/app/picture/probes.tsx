import type { CheckPoint } from '../../schema/check.ts';
import { nodePoints } from './geometry.ts';
import { onPicture, PICTURE, type Placed } from './layout.ts';

interface ProbesProps {
  readonly sheet: Placed | undefined;
  readonly sheets: readonly Placed[];
  readonly at: CheckPoint;
  readonly unit: string;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Where the probes go: a numbered bob with a needle to a ring on the point, a thin line to the meter. */
export function Probes({ sheet, sheets, at, unit }: ProbesProps) {
  const spots = spotsOf(sheet === undefined ? sheets : [sheet, ...sheets], at);
  if (spots.length === 0) return null;
  const meter = meterPlace(spots);
  return (
    <g fill="none" stroke="var(--accent)" strokeWidth="3">
      {spots.map((spot, index) => (
        <Probe key={`${spot.x} ${spot.y}`} spot={spot} number={index + 1} count={spots.length} meter={meter} />
      ))}
      <circle cx={meter.x} cy={meter.y} r="19" fill="var(--paper)" />
      <text x={meter.x} y={meter.y + 6} textAnchor="middle" stroke="none" className="accent-text" style={{ fontSize: 18 }}>
        {unit}
      </text>
    </g>
  );
}

function Probe({ spot, number, count, meter }: { spot: Spot; number: number; count: number; meter: Spot }) {
  const side = count === 1 ? 0 : number === 1 ? -1 : 1;
  const up = spot.y > meter.y ? -1 : 1;
  const bob = { x: spot.x + side * 15, y: spot.y + up * 26 };
  return (
    <g>
      <path d={`M${bob.x} ${bob.y}Q${(bob.x + meter.x) / 2} ${meter.y} ${meter.x} ${meter.y}`} strokeWidth="1.8" />
      <circle cx={spot.x} cy={spot.y} r="9" />
      <path d={`M${bob.x} ${bob.y}L${spot.x} ${spot.y + up * 8}`} strokeWidth="4" />
      <circle cx={bob.x} cy={bob.y} r="10" fill="var(--accent)" />
      <text x={bob.x} y={bob.y + 5} textAnchor="middle" stroke="none" style={{ fill: 'var(--on-accent)', fontWeight: 700 }}>
        {number}
      </text>
    </g>
  );
}

/** The meter stands beside the probes, inside the sheet. */
function meterPlace(spots: readonly Spot[]): Spot {
  const x = spots.reduce((sum, spot) => sum + spot.x, 0) / spots.length;
  const lowest = Math.max(...spots.map((spot) => spot.y));
  const below = lowest + 62 < PICTURE.height - 22;
  const highest = Math.min(...spots.map((spot) => spot.y));
  return { x: Math.min(PICTURE.width - 24, Math.max(24, x)), y: below ? lowest + 62 : Math.max(24, highest - 62) };
}

function spotsOf(sheets: readonly Placed[], at: CheckPoint): Spot[] {
  if ('look' in at) return [];
  const nodes = 'between' in at ? at.between : 'tied' in at ? [at.tied[0] ?? '', at.to] : [];
  const found = nodes.flatMap((node) => nodeSpot(sheets, node) ?? []);
  const parts = 'across' in at ? [at.across] : 'clamp' in at ? at.clamp : [];
  return [...found, ...parts.flatMap((part) => partSpots(sheets, part, 'across' in at))];
}

function nodeSpot(sheets: readonly Placed[], node: string): Spot | undefined {
  for (const placed of sheets) {
    const at = nodePoints(placed.piece).get(node);
    if (at !== undefined) return onPicture(placed, at);
  }
  return undefined;
}

/** Both ends of a part that is measured on its own terminals; its middle where it is clamped. */
function partSpots(sheets: readonly Placed[], id: string, ends: boolean): Spot[] {
  for (const placed of sheets) {
    const part = placed.piece.parts.find((one) => one.id === id);
    if (part === undefined) continue;
    const points = nodePoints(placed.piece);
    const [one, other] = part.between.map((node) => points.get(node));
    if (part.at !== undefined && !ends) return [onPicture(placed, part.at)];
    if (part.at !== undefined && ends) {
      const reach = 13;
      const along: readonly [number, number] = part.turn === 'down' ? [0, reach] : [reach, 0];
      return [
        onPicture(placed, [part.at[0] - along[0], part.at[1] - along[1]]),
        onPicture(placed, [part.at[0] + along[0], part.at[1] + along[1]]),
      ];
    }
    return [one, other].flatMap((point) => (point === undefined ? [] : [onPicture(placed, point)]));
  }
  return [];
}
