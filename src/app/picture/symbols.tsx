import type { ReactNode } from 'react';
import type { PartKind } from '../../schema/netlist.ts';

/**
 * One symbol a kind of part, lying across its line from (−half, 0) to (half, 0); `reach` is how far
 * it stands out to each side. Drawn in the ink of its parent.
 */
export interface SymbolShape {
  readonly half: number;
  readonly reach: number;
  readonly shape: ReactNode;
  /** Drawn on a small sheet too. */
  readonly always?: true;
}

const dots = (half: number): ReactNode => (
  <>
    <circle cx={-half} r="2.2" fill="currentColor" stroke="none" />
    <circle cx={half} r="2.2" fill="currentColor" stroke="none" />
  </>
);

const arm = (made: boolean, half = 8): ReactNode => (
  <>
    {dots(half)}
    <path d={made ? `M${-half} 0H${half}` : `M${-half} 0L${half - 1}-8`} strokeWidth={made ? 3.6 : 2.4} />
  </>
);

const HALF_ROUNDS = 'a3.5 3.5 0 0 1 7 0';

const made: SymbolShape = { half: 8, reach: 4, shape: arm(true), always: true };
const parted: SymbolShape = { half: 8, reach: 8.5, shape: arm(false), always: true };
const innerParted: SymbolShape = { half: 7, reach: 9, shape: arm(false, 7) };
const capacitor: SymbolShape = { half: 3, reach: 9, shape: <path d="M-3-9V9M3-9V9" strokeWidth="2.8" /> };
const coil: SymbolShape = { half: 14, reach: 4, shape: <path d={`M-14 0${HALF_ROUNDS.repeat(4)}`} /> };
const winding: SymbolShape = { ...coil, always: true };
/** On a small motor there is no room for four. */
const smallWinding: SymbolShape = {
  half: 8,
  reach: 4,
  always: true,
  shape: <path d={`M-8 0${'a2.67 3.5 0 0 1 5.33 0'.repeat(3)}`} />,
};
const resistor: SymbolShape = { half: 8, reach: 4, shape: <path d="M-8-4H8V4H-8z" fill="var(--paper)" /> };
const overload: SymbolShape = { half: 8, reach: 8, shape: <path d="M-8 0a8 8 0 0 1 16 0" /> };
const splice: SymbolShape = {
  half: 6,
  reach: 6,
  shape: <path d="M-7 0 0-6 7 0 0 6z" fill="var(--paper)" />,
  always: true,
};
const blade: SymbolShape = { half: 5, reach: 6, shape: <path d="M-5-6V6M5-6V6M-5 0H5" /> };

/** Nothing for what is a plain line. `isMade` is how a hand-worked contact stands. */
export function symbolOf(kind: PartKind, isMade: boolean, large = true): SymbolShape | undefined {
  switch (kind) {
    case 'breaker-pole':
    case 'ground-fault-pole':
    case 'disconnect-pole':
      return isMade ? made : parted;
    case 'switch-pole':
    case 'cut-off-pole':
    case 'loop-device':
    case 'protector-pole':
      return made;
    case 'relay-contact':
    case 'contactor-pole':
    case 'start-switch-inside':
    case 'sense-switch':
      return innerParted;
    case 'capacitor-start':
    case 'capacitor-run':
      return capacitor;
    case 'relay-coil':
    case 'contactor-coil':
    case 'sense-coil':
      return coil;
    case 'winding-main':
    case 'winding-start':
      return large ? winding : smallWinding;
    case 'bleed':
    case 'fuse':
      return resistor;
    case 'overload':
    case 'protector':
      return overload;
    case 'splice':
      return splice;
    case 'lid-contact':
      return blade;
    case 'source':
    case 'wire':
    case 'earth':
    case 'insulation':
    case 'lead-terminal':
    case 'conductor-buried':
    case 'conductor-drop':
    case 'voltmeter':
    case 'capacitance-meter':
      return undefined;
    default: {
      const never: never = kind;
      return never;
    }
  }
}
