import type { PartKind } from '../../schema/netlist.ts';

/**
 * Which moving contacts are made. One record says how everything that moves stands; each kind of
 * part looks at its own line of it.
 */
export interface Position {
  /** The pressure switch is told to call for water. */
  readonly calling: boolean;
  readonly contactor: boolean;
  /** Contact of a potential relay: made at rest. */
  readonly relay: boolean;
  /** Current-sensing start switch, in a box or inside the motor: apart at rest. */
  readonly sense: boolean;
  readonly leads: 'connected' | 'lifted' | 'split';
  /** Long enough without current for a protector to close again. */
  readonly cooled: boolean;
}

/** How everything stands with no power on. */
export const atRest = (
  site: Pick<Position, 'calling' | 'leads'> & { readonly cooled?: boolean | undefined },
): Position => ({
  calling: site.calling,
  contactor: false,
  relay: true,
  sense: false,
  leads: site.leads,
  cooled: site.cooled ?? false,
});

/** With nothing taken apart and every hand-moved contact held made. */
export const HELD_MADE: Position = {
  ...atRest({ calling: true, leads: 'connected' }),
  contactor: true,
};

/** Whether a sound part of this kind conducts in this position. */
export function isMade(kind: PartKind, position: Position): boolean {
  switch (kind) {
    case 'switch-pole':
      return position.calling;
    case 'contactor-pole':
      return position.contactor;
    case 'relay-contact':
      return position.relay;
    case 'sense-switch':
    case 'start-switch-inside':
      return position.sense;
    case 'lead-terminal':
      return position.leads === 'connected';
    case 'splice':
      return position.leads !== 'split';
    default:
      return true;
  }
}
