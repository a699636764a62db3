import '../styles/base.css';

export type Lead = 'yellow' | 'black' | 'red' | 'one' | 'two' | 'ground';

interface LeadChipProps {
  readonly lead: Lead;
  readonly width?: number;
}

/**
 * A short piece of a lead: yellow a plain core, black solid, red with light ticks, each with an ink
 * edge. The word always stands beside it, since colour is only a claim.
 */
export function LeadChip({ lead, width = 26 }: LeadChipProps) {
  return (
    <svg
      className="lead-chip"
      aria-hidden="true"
      data-lead={lead}
      width={width}
      height="12"
      viewBox={`0 0 ${width} 12`}
    >
      <path d={`M0 6H${width}`} stroke="var(--ink)" strokeWidth="11" />
      <path d={`M0 6H${width}`} stroke={coreOf(lead)} strokeWidth="7.6" />
      {lead === 'red' && (
        <path
          d={`M0 6H${width}`}
          stroke="var(--paper)"
          strokeWidth="7.6"
          strokeDasharray="3 7"
          strokeDashoffset="-4"
        />
      )}
      {lead === 'two' && (
        <path d={`M0 6H${width}`} stroke="var(--ink)" strokeWidth="7.6" strokeDasharray="2 4" />
      )}
    </svg>
  );
}

/** Fill of a lead inside its ink edge. Leads of a two-wire motor have no colour that means anything. */
export function coreOf(lead: Lead): string {
  switch (lead) {
    case 'yellow':
      return 'var(--lead-yellow)';
    case 'red':
      return 'var(--lead-red)';
    case 'black':
      return 'var(--lead-black)';
    case 'one':
    case 'two':
    case 'ground':
      return 'var(--paper)';
    default: {
      const never: never = lead;
      return never;
    }
  }
}
