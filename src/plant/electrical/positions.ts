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
}

/** How everything stands with no power on. */
export const atRest = (calling: boolean, leads: Position['leads']): Position => ({
  calling,
  contactor: false,
  relay: true,
  sense: false,
  leads,
});

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

/** Kinds whose contact an edit can hold made or apart and that a hand can move for a reading. */
export const isMoving = (kind: PartKind): boolean =>
  kind === 'switch-pole' || kind === 'contactor-pole' || kind === 'relay-contact' || isSensing(kind);

/** Start switches that current fires and speed lets go. */
export const isSensing = (kind: PartKind): boolean =>
  kind === 'sense-switch' || kind === 'start-switch-inside';
