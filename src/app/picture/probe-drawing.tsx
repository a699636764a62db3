import { type Point, pathText } from './geometry.ts';
import type { ProbePlaces } from './probe-places.ts';

interface ProbesProps {
  readonly places: ProbePlaces;
  /** Sign of the unit in the meter's face. */
  readonly unit: string;
}

/** The instrument: a numbered bob with a needle to a ring on each point, thin lines to the meter's face. */
export function ProbesDrawing({ places, unit }: ProbesProps) {
  const { probes, meter, clamps, ties, looked } = places;
  const ends = clamps.length > 0 ? clamps : probes.map(({ bob }) => bob);
  return (
    <g className="probes" fill="none" stroke="var(--accent)">
      {looked !== undefined && (
        <rect
          x={looked.x - 6}
          y={looked.y - 6}
          width={looked.width + 12}
          height={looked.height + 12}
          strokeWidth="4"
        />
      )}
      {ties.map((tie) => (
        <Tie key={pathText(tie)} points={tie} />
      ))}
      {meter !== undefined && ends.map((end) => <Cord key={pathText([end])} from={end} to={meter} />)}
      {clamps.map((point) => (
        <Jaw key={pathText([point])} at={point} />
      ))}
      {probes.map(({ point, bob }, index) => (
        <Bob key={pathText([point, bob])} point={point} bob={bob} number={index + 1} />
      ))}
      {meter !== undefined && <Face at={meter} unit={unit} />}
    </g>
  );
}

function Cord({ from, to }: { from: Point; to: Point }) {
  return (
    <>
      <path d={pathText([from, to])} stroke="var(--paper)" strokeWidth="5.5" />
      <path d={pathText([from, to])} strokeWidth="2" />
    </>
  );
}

function Bob({ point, bob, number }: { point: Point; bob: Point; number: number }) {
  const length = Math.hypot(bob[0] - point[0], bob[1] - point[1]) || 1;
  const angle = (Math.atan2(point[1] - bob[1], point[0] - bob[0]) * 180) / Math.PI;
  const tip = length - 8;
  return (
    <>
      <circle cx={point[0]} cy={point[1]} r="9.5" stroke="var(--paper)" strokeWidth="7" />
      <circle cx={point[0]} cy={point[1]} r="9.5" strokeWidth="3.2" />
      <g transform={`translate(${bob[0]} ${bob[1]}) rotate(${angle})`}>
        <path d={`M0-9.5L${tip} 0L0 9.5`} fill="var(--accent)" stroke="var(--paper)" strokeWidth="1.5" />
      </g>
      <circle cx={bob[0]} cy={bob[1]} r="11" fill="var(--accent)" stroke="var(--paper)" strokeWidth="1.5" />
      <text className="picture-number" x={bob[0]} y={bob[1] + 5} textAnchor="middle">
        {number}
      </text>
    </>
  );
}

/** The jaws of a clamp round one conductor. */
function Jaw({ at: [x, y] }: { at: Point }) {
  return (
    <>
      <ellipse cx={x} cy={y} rx="13" ry="7" stroke="var(--paper)" strokeWidth="7" />
      <ellipse cx={x} cy={y} rx="13" ry="7" strokeWidth="3.4" />
    </>
  );
}

/** Ends that are twisted together. */
function Tie({ points }: { points: readonly Point[] }) {
  const drop = 15;
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return null;
  return (
    <path
      d={`${points.map(([x, y]) => `M${x} ${y}v${drop}`).join('')}M${first[0]} ${first[1] + drop}H${last[0]}`}
      strokeWidth="3"
      strokeDasharray="5 2.5"
    />
  );
}

function Face({ at: [x, y], unit }: { at: Point; unit: string }) {
  return (
    <>
      <circle cx={x} cy={y} r="19" fill="var(--paper)" strokeWidth="3" />
      <text className="picture-unit" x={x} y={y + 6} textAnchor="middle">
        {unit}
      </text>
    </>
  );
}
