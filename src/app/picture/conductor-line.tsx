import '../styles/base.css';
import '../styles/conductor.css';
import { coreOf } from '../parts/lead-chip.tsx';
import { type ConductorPlace, type ConductorView, END, placesOf } from './conductor.ts';

interface ConductorLineProps {
  readonly conductor: ConductorView;
  /** The whole in one sentence, for those who do not see it. */
  readonly spoken: string;
}

/** One conductor from box to motor with the ohms of each part, the fault ringed. */
export function ConductorLine({ conductor, spoken }: ConductorLineProps) {
  const places = placesOf(conductor);
  const ringed = places.find((place) => place.ringed);
  return (
    <figure className="conductor" role="img" aria-label={spoken}>
      <div className="conductor-row" aria-hidden="true">
        <span className="conductor-end">{conductor.ends.from}</span>
        <span className="conductor-end">{conductor.ends.to}</span>
      </div>
      <div className="conductor-row conductor-amounts" aria-hidden="true">
        {places
          .filter(({ kind }) => kind === 'length')
          .map((place) => (
            <span key={place.id} className="conductor-amount" style={{ left: `${middleOf(place)}%` }}>
              {place.amount}
            </span>
          ))}
      </div>
      <svg aria-hidden="true" width="100%" height="58">
        <Chain places={places} />
        <LeadOf conductor={conductor} />
        <Ends />
        {places.map((place) => (
          <Mark key={place.id} place={place} />
        ))}
      </svg>
      {ringed !== undefined && (
        <p
          className="conductor-fault"
          aria-hidden="true"
          style={{ paddingInlineStart: `${startOf(ringed)}%` }}
        >
          {ringed.name}
          {ringed.amount !== undefined && `: ${ringed.amount}`}
        </p>
      )}
    </figure>
  );
}

const middleOf = ({ from, to }: ConductorPlace): number => (from + to) / 2;

/** The words begin left of the ring where they would run off the sheet. */
const startOf = (place: ConductorPlace): number => Math.max(0, Math.min(42, middleOf(place) - 18));

const LINE_Y = 36;

function Chain({ places }: { places: readonly ConductorPlace[] }) {
  return places
    .filter(({ kind, amount }) => kind === 'length' && amount !== undefined)
    .map(({ id, from, to }) => (
      <g key={id} stroke="var(--ink)" strokeWidth="1.8">
        <line x1={`${from + 1}%`} x2={`${to - 1}%`} y1="8" y2="8" />
        <Slash at={from + 1} />
        <Slash at={to - 1} />
      </g>
    ));
}

function Slash({ at }: { at: number }) {
  return (
    <svg x={`${at}%`} overflow="visible" aria-hidden="true">
      <path d="M-4 14L4 2" stroke="var(--ink)" strokeWidth="2.4" />
    </svg>
  );
}

function LeadOf({ conductor: { lead } }: { conductor: ConductorView }) {
  const ends = { x1: `${END}%`, x2: `${100 - END}%`, y1: LINE_Y, y2: LINE_Y };
  return (
    <>
      <line {...ends} stroke="var(--ink)" strokeWidth="9" />
      <line {...ends} stroke={coreOf(lead)} strokeWidth="6" />
      {lead === 'red' && <line {...ends} stroke="var(--paper)" strokeWidth="6" strokeDasharray="3 8" />}
    </>
  );
}

function Ends() {
  return (
    <g fill="var(--paper)" stroke="var(--ink)" strokeWidth="2.6">
      <svg x={`${END}%`} overflow="visible" aria-hidden="true">
        <path d={`M-14 ${LINE_Y - 16}H0V${LINE_Y + 16}H-14Z`} />
      </svg>
      <svg x={`${100 - END}%`} overflow="visible" aria-hidden="true">
        <path d={`M0 ${LINE_Y - 18}H20V${LINE_Y + 18}H0Z`} />
        <path d={`M12 ${LINE_Y - 13}a4 4.3 0 0 1 0 8.6a4 4.3 0 0 1 0 8.6a4 4.3 0 0 1 0 8.6`} fill="none" />
      </svg>
    </g>
  );
}

/** A joint is a lozenge; what is at fault has a ring, parted from the lead by paper. */
function Mark({ place }: { place: ConductorPlace }) {
  return (
    <svg x={`${middleOf(place)}%`} overflow="visible" aria-hidden="true">
      {place.ringed && (
        <g fill="none">
          <circle cy={LINE_Y} r="18" stroke="var(--paper)" strokeWidth="9" />
          <circle cy={LINE_Y} r="18" stroke="var(--accent)" strokeWidth="4" />
          <path d={`M0 ${LINE_Y + 18}V${LINE_Y + 24}`} stroke="var(--accent)" strokeWidth="4" />
        </g>
      )}
      {place.kind === 'joint' && (
        <path
          d={`M-7 ${LINE_Y}L0 ${LINE_Y - 11}L7 ${LINE_Y}L0 ${LINE_Y + 11}Z`}
          fill="var(--paper)"
          stroke="var(--ink)"
          strokeWidth="2.4"
        />
      )}
    </svg>
  );
}
