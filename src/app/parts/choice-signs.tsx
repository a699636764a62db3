import type { ReactNode } from 'react';

/**
 * Three signs say the six states, always in this order: gauge, motor, tap. Each has few positions,
 * so that a state is read as a row is read, not learned as a picture.
 */
type Gauge = 'zero' | 'low' | 'between' | 'high' | 'wavers' | 'unknown';
type Motor = 'silent' | 'hums' | 'runs' | 'clicks' | 'hums-then-quiet';
type Tap = 'dry' | 'flows' | 'pulses';

const line = { fill: 'none', stroke: 'currentColor', strokeWidth: 2.4 } as const;

/** Angle of the needle, degrees right of straight up. */
const NEEDLES: Readonly<Record<Exclude<Gauge, 'unknown'>, number>> = {
  zero: -130,
  low: -70,
  between: 0,
  high: 62,
  wavers: -20,
};
const TICKS = [-130, -65, 0, 65, 130] as const;

function GaugeSign({ at }: { at: Gauge }) {
  return (
    <svg aria-hidden="true" width="44" height="44" viewBox="0 0 44 44">
      <circle cx="22" cy="22" r="19" {...line} />
      {TICKS.map((turn) => (
        <path key={turn} d="M22 3V9" {...line} strokeWidth={2} transform={`rotate(${turn} 22 22)`} />
      ))}
      {at === 'unknown' ? <Unknown x={22} y={30} /> : <Needle turn={NEEDLES[at]} />}
      {at === 'wavers' && (
        <path d="M22 22V10" {...line} strokeDasharray="3 2.5" transform="rotate(-75 22 22)" />
      )}
    </svg>
  );
}

function Needle({ turn }: { turn: number }) {
  return (
    <g transform={`rotate(${turn} 22 22)`}>
      <path d="M22 24V8.5" {...line} strokeWidth={3} />
      <circle cx="22" cy="22" r="3.4" fill="currentColor" />
    </g>
  );
}

function Unknown({ x, y }: { x: number; y: number }) {
  return (
    <text x={x} y={y} textAnchor="middle" fontSize="22" fontWeight="700" fill="currentColor">
      ?
    </text>
  );
}

const MOTORS: Readonly<Record<Motor, ReactNode>> = {
  silent: <path d="M13 27H29" {...line} strokeWidth={3} />,
  hums: (
    <>
      <path d="M11 28L15 20L18.5 33L22 20L25.5 33L29 22" {...line} />
      <path d="M4 18Q0 26 4 34M38 18Q42 26 38 34" {...line} />
    </>
  ),
  'hums-then-quiet': (
    <>
      <path d="M11 24L14 18L17 29L20 20" {...line} />
      <path d="M20 33H30" {...line} strokeWidth={3} />
    </>
  ),
  clicks: <path d="M21 17V24M14 20L17 26M28 20L25 26M14 33H28" {...line} />,
  runs: (
    <>
      <path d="M13.5 31A9 9 0 1 1 27 31.5" {...line} />
      <path d="M30 25L28.5 35L21 30Z" fill="currentColor" />
    </>
  ),
};

function MotorSign({ does }: { does: Motor }) {
  return (
    <svg aria-hidden="true" width="42" height="44" viewBox="0 0 42 44">
      <path d="M7 9H35V42H7Z" {...line} />
      <path d="M16 9V4H26V9" {...line} />
      {MOTORS[does]}
    </svg>
  );
}

const TAPS: Readonly<Record<Tap, ReactNode>> = {
  dry: <path d="M28 33L37 42M37 33L28 42" {...line} />,
  flows: <path d="M32.5 30V43" {...line} strokeWidth={6} />,
  pulses: <path d="M32.5 30V43" {...line} strokeWidth={5} strokeDasharray="4 3" />,
};

function TapSign({ gives }: { gives: Tap }) {
  return (
    <svg aria-hidden="true" width="42" height="44" viewBox="0 0 42 44">
      <path d="M4 12H27Q37 12 37 21V27H28V22H4Z" {...line} />
      <path d="M17 12V5M10 4H24" {...line} />
      {TAPS[gives]}
    </svg>
  );
}

/** A breaker with its lever up, in the middle, down, or not seen. */
function LeverSign({ at }: { at: 'on' | 'middle' | 'off' | 'not-seen' }) {
  const top = { on: 6, middle: 14, off: 23, 'not-seen': undefined }[at];
  return (
    <svg aria-hidden="true" width="24" height="38" viewBox="0 0 24 38">
      <path d="M3 2H21V36H3Z" {...line} />
      {top === undefined ? (
        <Unknown x={12} y={26} />
      ) : (
        <path d={`M7 ${top}H17V${top + 9}H7Z`} fill="currentColor" />
      )}
    </svg>
  );
}

const seen = (gauge: Gauge, motor: Motor, tap: Tap): ReactNode => (
  <>
    <GaugeSign at={gauge} />
    <MotorSign does={motor} />
    <TapSign gives={tap} />
  </>
);

/** Signs by check and answer. A check that is not here has answers in words alone. */
const SIGNS: Readonly<Record<string, Readonly<Record<string, ReactNode>>>> = {
  'what-is-seen': {
    'silent-with-pressure': seen('high', 'silent', 'dry'),
    'silent-without-pressure': seen('zero', 'silent', 'dry'),
    'hums-or-trips': seen('zero', 'hums', 'dry'),
    'runs-without-water': seen('zero', 'runs', 'dry'),
    'runs-badly': seen('wavers', 'runs', 'pulses'),
    'works-now': seen('between', 'runs', 'flows'),
  },
  'breaker-lever': {
    on: <LeverSign at="on" />,
    middle: <LeverSign at="middle" />,
    off: <LeverSign at="off" />,
    'not-seen': <LeverSign at="not-seen" />,
  },
  'gauge-zone': {
    zero: <GaugeSign at="zero" />,
    'below-cut-in': <GaugeSign at="low" />,
    between: <GaugeSign at="between" />,
    'above-cut-out': <GaugeSign at="high" />,
    'no-gauge': <GaugeSign at="unknown" />,
  },
  'motor-sound': {
    silence: <MotorSign does="silent" />,
    'click-only': <MotorSign does="clicks" />,
    'hum-then-quiet': <MotorSign does="hums-then-quiet" />,
    'steady-hum': <MotorSign does="hums" />,
    'rapid-clicking': <MotorSign does="clicks" />,
    runs: <MotorSign does="runs" />,
  },
};

/** The signs of one answer, or nothing. */
export function choiceSign(check: string, answer: string): ReactNode {
  return SIGNS[check]?.[answer];
}

/** How many signs an answer of this check carries. */
export function signsOf(check: string): 'three' | 'one' | 'none' {
  if (check === 'what-is-seen') return 'three';
  return SIGNS[check] === undefined ? 'none' : 'one';
}
