import type { ReactNode } from 'react';
import type { PartKind } from '../../schema/netlist.ts';

/**
 * One symbol a kind of part, drawn lying across a line from (-half, 0) to (half, 0).
 * `made` is how a moving contact stands.
 */
export interface SymbolShape {
  readonly half: number;
  readonly shape: ReactNode;
}

const dots = (half: number): ReactNode => (
  <g fill="currentColor" stroke="none">
    <circle cx={-half} r="2.4" />
    <circle cx={half} r="2.4" />
  </g>
);

const contact = (made: boolean): SymbolShape => ({
  half: 10,
  shape: (
    <g>
      {dots(10)}
      <path d={made ? 'M-10 0H10' : 'M-10 0 8-9'} strokeWidth={made ? 3.4 : 2.4} />
    </g>
  ),
});

const capacitor: SymbolShape = {
  half: 3,
  shape: <path d="M-3-9V9M3-9V9" strokeWidth="2.6" />,
};

const coil: SymbolShape = {
  half: 14,
  shape: <path d="M-14 0a3.5 3.5 0 0 1 7 0a3.5 3.5 0 0 1 7 0a3.5 3.5 0 0 1 7 0a3.5 3.5 0 0 1 7 0" />,
};

const resistor: SymbolShape = { half: 11, shape: <path d="M-11-4.5H11V4.5H-11z" /> };
const overload: SymbolShape = { half: 11, shape: <path d="M-11 0h3a8 8 0 0 1 16 0h3" /> };
const splice: SymbolShape = { half: 7, shape: <path d="M-7 0 0-9 7 0 0 9z" fill="var(--paper)" /> };
const triac: SymbolShape = { half: 8, shape: <path d="M-8-7 8 0-8 7zM8-7V7" /> };
const blade: SymbolShape = { half: 7, shape: <path d="M-7 0h5M7 0H2M-2-5v10M2-5v10" /> };
const source: SymbolShape = {
  half: 10,
  shape: (
    <g>
      <circle r="10" fill="var(--paper)" />
      <path d="M-6 0c2-6 4-6 6 0s4 6 6 0" strokeWidth="1.6" />
    </g>
  ),
};

export function symbolOf(kind: PartKind, made: boolean): SymbolShape | undefined {
  switch (kind) {
    case 'breaker-pole':
    case 'disconnect-pole':
    case 'switch-pole':
    case 'cut-off-pole':
    case 'relay-contact':
    case 'contactor-pole':
    case 'loop-device':
    case 'start-switch-inside':
      return contact(made);
    case 'capacitor-start':
    case 'capacitor-run':
      return capacitor;
    case 'relay-coil':
    case 'contactor-coil':
    case 'sense-coil':
    case 'winding-main':
    case 'winding-start':
      return coil;
    case 'bleed':
    case 'fuse':
    case 'insulation':
      return resistor;
    case 'overload':
    case 'protector':
      return overload;
    case 'splice':
      return splice;
    case 'sense-switch':
      return triac;
    case 'lid-contact':
      return blade;
    case 'source':
      return source;
    case 'wire':
    case 'earth':
    case 'lead-terminal':
    case 'conductor-buried':
    case 'conductor-drop':
    case 'voltmeter':
      return undefined;
    default: {
      const never: never = kind;
      return never;
    }
  }
}
