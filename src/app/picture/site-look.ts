import type { SiteView } from '../../../machines/call/types.ts';
import type { Place } from '../../schema/basics.ts';
import type { Part, Sheet } from '../../schema/netlist.ts';

/**
 * What the claims about the site change in the picture: which conductors carry thorns, what is
 * lifted, where a cover is off. It reads the facts of the strip and nothing else, so a drawing never
 * gives a hidden fault away.
 *
 * A conductor is plain only where it was proved dead, or where it hangs on nothing but conductors
 * that were: the switch may stand open, so a proved box says nothing of the wires before it.
 */
export interface SiteLook {
  isLive(sheet: Sheet): boolean;
  isProved(sheet: Sheet): boolean;
  isOpen(sheet: Sheet): boolean;
  /** The supply is switched off at the breaker. */
  readonly isOff: boolean;
  readonly isLocked: boolean;
  /** The leads are off their terminals. */
  readonly isLifted: boolean;
  readonly isSplit: boolean;
  /** Capacitors of a dead box may still hold a charge. */
  readonly isCharged: boolean;
  /** Drawn with a gap: a lead that is off, a splice that is cut. */
  isParted(part: Part): boolean;
}

/** @param hasBox without one the motor leads hang on the switch */
export function siteLook(site: SiteView, hasBox: boolean): SiteLook {
  const isProvedAt = (place: Place): boolean => site.places[place] === 'proved';
  const isProved = (sheet: Sheet): boolean => {
    if (sheet === 'service') return false;
    if (sheet === 'motor') return isProvedAt('well') || isProvedAt(hasBox ? 'box' : 'switch');
    return isProvedAt(sheet);
  };
  const isDeadWell = isProvedAt('well') || isProvedAt(hasBox ? 'box' : 'switch');
  return {
    isLive: (sheet) => (sheet === 'well' || sheet === 'motor' ? !isDeadWell : !isProved(sheet)),
    isProved,
    isOpen: (sheet) => sheet !== 'service' && sheet !== 'motor' && site.places[sheet] !== 'closed',
    isOff: site.supply !== 'live',
    isLocked: site.supply === 'locked',
    isLifted: site.leads !== 'connected',
    isSplit: site.leads === 'split',
    isCharged: site.charge === 'possible',
    isParted: (part) =>
      (part.kind === 'lead-terminal' && site.leads !== 'connected') ||
      (part.kind === 'splice' && site.leads === 'split'),
  };
}
